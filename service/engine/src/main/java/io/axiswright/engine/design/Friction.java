package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.LinearDamping;
import org.jspecify.annotations.Nullable;

/**
 * Guide friction of a linear axis: F = coefficient · normal force + drag + viscous · speed, always against the motion.
 *
 * @param coefficient friction coefficient of the guides
 * @param drag constant drag of seals and wipers
 * @param viscous viscous part
 */
public record Friction(
        @Bounds(min = 0, max = 2) double coefficient,
        @Bounds(min = 0) @Nullable Force drag,
        @Bounds(min = 0) @Nullable LinearDamping viscous) {}
