package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * How long a cable must be to reach from one position to another.
 *
 * @param metric how the way is measured
 * @param factor length of the way per measured length
 * @param slackPerEnd extra length at each end
 */
public record RouteRule(
        RouteMetric metric,
        @Bounds(min = 1, max = 5) double factor,
        @Bounds(min = 0, max = 20) Length slackPerEnd) {

    /** Length of cable needed between two positions: measured way times factor, plus slack at both ends. */
    public Length between(Position a, Position b) {
        double dx = Math.abs(a.x().si() - b.x().si());
        double dy = Math.abs(a.y().si() - b.y().si());
        double dz = Math.abs(a.z().si() - b.z().si());
        double way = switch (metric) {
            case RECTILINEAR -> dx + dy + dz;
            case STRAIGHT -> Math.sqrt(dx * dx + dy * dy + dz * dz);
        };
        return new Length(way * factor + 2 * slackPerEnd.si());
    }
}
