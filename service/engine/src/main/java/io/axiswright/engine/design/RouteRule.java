package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * How long a cable must be to reach from one position to another.
 *
 * @param metric how the way is measured; where the network has cable ways, the way to them and from them
 * @param factor length of the way per measured length
 * @param slackPerEnd extra length at each end
 */
public record RouteRule(
        RouteMetric metric,
        @Bounds(min = 1, max = 5) double factor,
        @Bounds(min = 0, max = 20) Length slackPerEnd) {

    /** Length of cable needed between two positions: measured way times factor, plus slack at both ends. */
    public Length between(Position a, Position b) {
        return cable(way(a, b));
    }

    /** The measured way between two positions, m. */
    double way(Position a, Position b) {
        return metric.way(a, b);
    }

    /** Length of cable needed for a way, m: times factor, plus slack at both ends. */
    Length cable(double way) {
        return new Length(way * factor + 2 * slackPerEnd.si());
    }
}
