package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * A light curtain across the direction of approach, that cannot be reached over, under or around.
 *
 * @param detectionCapability the smallest object it is sure to see; of 70 mm at most by the edition of 2010
 */
@JsonTypeName("LIGHT_CURTAIN")
public record LightCurtain(@Bounds(above = 0, max = 0.2) Length detectionCapability) implements Detection {}
