package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;

/**
 * Parallel key.
 *
 * @param engagedLength bearing length of the key
 * @param yieldStrength yield strength of the weakest of key, shaft and hub
 */
@JsonTypeName("KEY")
public record KeyFastening(
        @Bounds(above = 0, max = 1) Length engagedLength,
        @Bounds(above = 0) Pressure yieldStrength) implements Fastening {}
