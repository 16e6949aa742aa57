package io.axiswright.engine.duty;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How far a load comes under each of its efforts. What is largest there is worked out only if somebody asks, for it takes a
 * search along the way.
 */
final class Reach {

    /**
     * Where the load is under one effort.
     *
     * @param effort the effort
     * @param lowest its lowest position, m or rad
     * @param highest its highest
     */
    record Way(LoadEffort effort, double lowest, double highest) {}

    private final List<Way> ways;
    private double holding = Double.NaN;
    private double inertia = Double.NaN;

    Reach(List<Way> ways) {
        this.ways = List.copyOf(ways);
    }

    /** The largest torque at the mechanism's shaft that a brake may have to hold, N·m. */
    double holding() {
        if (Double.isNaN(holding)) {
            holding = largest(way -> way.effort.largestHolding(way.lowest, way.highest));
        }
        return holding;
    }

    /** The largest inertia of the load as that shaft feels it, kg·m². */
    double inertia() {
        if (Double.isNaN(inertia)) {
            inertia = largest(way -> way.effort.largestInertia(way.lowest, way.highest));
        }
        return inertia;
    }

    /** From the lowest position to the highest, m or rad. */
    double stroke() {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (Way way : ways) {
            lowest = Math.min(lowest, way.lowest);
            highest = Math.max(highest, way.highest);
        }
        return highest - lowest;
    }

    /** Whether friction alone keeps the load at rest wherever it comes. */
    boolean heldByFriction() {
        return ways.stream()
                .allMatch(way -> way.effort.largestHolding(way.lowest, way.highest) <= way.effort.friction());
    }

    /** The least friction at the mechanism's shaft that keeps the load at rest, N·m. */
    double friction() {
        return ways.stream().mapToDouble(way -> way.effort.friction()).min().orElse(0);
    }

    private double largest(ToDoubleFunction<Way> size) {
        double largest = 0;
        for (Way way : ways) {
            largest = Math.max(largest, size.applyAsDouble(way));
        }
        return largest;
    }
}
