package io.axiswright.engine.braking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Leaves points out of a polyline of several values over time as long as it stays within a tolerance of each. */
final class Polyline {

    /**
     * A point.
     *
     * @param instant when, s
     * @param values the values
     * @param kept whether it must stay
     */
    record Vertex(double instant, double[] values, boolean kept) {

        Vertex keep() {
            return new Vertex(instant, values, true);
        }
    }

    private final List<Vertex> vertices;
    private final double[] tolerances;

    private Polyline(List<Vertex> vertices, double[] tolerances) {
        this.vertices = vertices;
        this.tolerances = tolerances;
    }

    /**
     * The points left.
     *
     * @param vertices the points, by time
     * @param tolerances by how much each value may be missed at any instant
     */
    static List<Vertex> thinned(List<Vertex> vertices, double[] tolerances) {
        return new Polyline(vertices, tolerances).thinned();
    }

    /** From each point left on to the last that can be seen past all gates between, each a tolerance wide to both sides. */
    private List<Vertex> thinned() {
        List<Vertex> left = new ArrayList<>();
        int at = 0;
        while (at < vertices.size()) {
            left.add(vertices.get(at));
            at = next(at);
        }
        return left;
    }

    private int next(int from) {
        Vertex anchor = vertices.get(from);
        double[] low = new double[tolerances.length];
        double[] high = new double[tolerances.length];
        Arrays.fill(low, Double.NEGATIVE_INFINITY);
        Arrays.fill(high, Double.POSITIVE_INFINITY);
        int last = -1;
        for (int k = from + 1; k < vertices.size(); k++) {
            Vertex vertex = vertices.get(k);
            double time = vertex.instant() - anchor.instant();
            if (time <= 0 && alike(anchor, vertex)) {
                continue;
            }
            if (time <= 0) {
                return k;
            }
            boolean seen = true;
            for (int c = 0; c < tolerances.length; c++) {
                double slope = (vertex.values()[c] - anchor.values()[c]) / time;
                seen &= slope >= low[c] && slope <= high[c];
                low[c] = Math.max(low[c], slope - tolerances[c] / time);
                high[c] = Math.min(high[c], slope + tolerances[c] / time);
            }
            if (seen) {
                last = k;
            }
            if (vertex.kept() || !open(low, high)) {
                return last;
            }
        }
        return last < 0 ? vertices.size() : last;
    }

    /** Whether two points of one instant are one. */
    private boolean alike(Vertex one, Vertex other) {
        for (int c = 0; c < tolerances.length; c++) {
            if (Math.abs(one.values()[c] - other.values()[c]) > 1e-6 * tolerances[c]) {
                return false;
            }
        }
        return true;
    }

    private static boolean open(double[] low, double[] high) {
        for (int c = 0; c < low.length; c++) {
            if (low[c] > high[c]) {
                return false;
            }
        }
        return true;
    }
}
