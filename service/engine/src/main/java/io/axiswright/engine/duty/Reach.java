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

    private double largest(ToDoubleFunction<Way> size) {
        double largest = 0;
        for (Way way : ways) {
            largest = Math.max(largest, size.applyAsDouble(way));
        }
        return largest;
    }
}
