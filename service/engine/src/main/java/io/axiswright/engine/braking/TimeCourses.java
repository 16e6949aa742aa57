package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * Asks for the course of every DC bus over time, to be drawn.
 *
 * @param tolerance by how much a straight line between two points may miss the exact course, as a share of the range of what
 *     is drawn; 0.001 if absent
 */
public record TimeCourses(
        @Bounds(min = 1e-4, max = 0.05) @Nullable Double tolerance) {

    private static final double USUAL = 1e-3;

    /** The tolerance asked for. */
    double share() {
        return tolerance == null ? USUAL : tolerance;
    }
}
