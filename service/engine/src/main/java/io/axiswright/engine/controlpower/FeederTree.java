package io.axiswright.engine.controlpower;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tree of loop resistances fed at its root, with a constant power, a constant conductance and a constant current at every
 * node.
 *
 * <p>In nodal form f(V) = Y V + G V + P/V + I − Y V₀ = 0. Every P/V is convex and the Jacobian is a symmetric matrix with no
 * positive entry off the diagonal, so Newton's method started from the source voltage at every node, which lies above any
 * solution, falls monotonically to the highest solution — the physical one — and, if there is none, must meet a pivot that
 * is not positive or a voltage that is not (monotone Newton theorem; Ortega and Rheinboldt, Iterative Solution of Nonlinear
 * Equations in Several Variables, chapter 13, from memory). On a tree one Newton step is one backward and one forward sweep
 * with the loads replaced by their tangents, i = a + b·v. It ends when no voltage falls any more; near collapse rounding
 * makes them rise a little instead.
 */
final class FeederTree {

    private static final int MOST_STEPS = 500;
    private static final double SMALLEST_FALL = 1e-12;
    private static final double MOST_MULTIPLE = 1e6;
    private static final double MULTIPLE_TOLERANCE = 1e-9;

    private final int[] parent;
    private final double[] resistance;
    private final double[] power;
    private final double[] conductance;
    private final double[] constantCurrent;

    /**
     * A tree of nodes.
     *
     * @param parent index of the node each hangs on, smaller than its own; −1 for the source
     * @param resistance loop resistance of the link into each, Ω
     * @param draws what each takes
     */
    FeederTree(int[] parent, double[] resistance, List<Draw> draws) {
        this.parent = parent.clone();
        this.resistance = resistance.clone();
        this.power = draws.stream().mapToDouble(Draw::power).toArray();
        this.conductance = draws.stream().mapToDouble(Draw::conductance).toArray();
        this.constantCurrent = draws.stream().mapToDouble(Draw::current).toArray();
    }

    /** The stable working point; none if the voltage collapses. */
    Optional<OperatingPoint> solve(double source) {
        return solve(source, 1);
    }

    /** The stable working point with all loads multiplied. */
    Optional<OperatingPoint> solve(double source, double multiple) {
        int n = parent.length;
        double[] v = new double[n];
        Arrays.fill(v, source);
        double[] current = new double[n];
        double[] a = new double[n];
        double[] b = new double[n];
        for (int step = 0; step < MOST_STEPS; step++) {
            for (int k = 0; k < n; k++) {
                a[k] = multiple * (2 * power[k] / v[k] + constantCurrent[k]);
                b[k] = multiple * (conductance[k] - power[k] / (v[k] * v[k]));
            }
            for (int k = n - 1; k >= 0; k--) {
                double pivot = 1 + resistance[k] * b[k];
                if (pivot <= 0) {
                    return Optional.empty();
                }
                if (parent[k] >= 0) {
                    a[parent[k]] += a[k] / pivot;
                    b[parent[k]] += b[k] / pivot;
                }
            }
            double largestFall = 0;
            double sourceCurrent = 0;
            for (int k = 0; k < n; k++) {
                double above = parent[k] < 0 ? source : v[parent[k]];
                current[k] = (a[k] + b[k] * above) / (1 + resistance[k] * b[k]);
                double next = above - resistance[k] * current[k];
                if (next <= 0) {
                    return Optional.empty();
                }
                largestFall = Math.max(largestFall, v[k] - next);
                v[k] = next;
                sourceCurrent += parent[k] < 0 ? current[k] : 0;
            }
            if (largestFall < SMALLEST_FALL) {
                return Optional.of(new OperatingPoint(v, current, sourceCurrent));
            }
        }
        return Optional.empty();
    }

    /** By what all loads may be multiplied before the voltage collapses; none if it does not below a million. */
    OptionalDouble collapseMultiple(double source) {
        double holds = 0;
        double collapses = 1;
        while (solve(source, collapses).isPresent()) {
            holds = collapses;
            collapses *= 2;
            if (collapses > MOST_MULTIPLE) {
                return OptionalDouble.empty();
            }
        }
        while (collapses - holds > MULTIPLE_TOLERANCE * collapses) {
            double middle = (holds + collapses) / 2;
            if (solve(source, middle).isPresent()) {
                holds = middle;
            } else {
                collapses = middle;
            }
        }
        return OptionalDouble.of(holds);
    }
}
