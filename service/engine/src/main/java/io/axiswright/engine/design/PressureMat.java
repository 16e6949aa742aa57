package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A mat on the floor that feels a step.
 *
 * @param stepHeight height of the step it lies on; on the floor if absent
 */
@JsonTypeName("PRESSURE_MAT")
public record PressureMat(
        @Bounds(min = 0, max = 1) @Nullable Length stepHeight) implements Detection {}
