package io.axiswright.engine.harmonic;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** A state that a map leads back to: by repeating the map, and by Newton's method where that takes long. */
final class FixedPoint {

    private static final double REPEATS = 1e-10;
    private static final double NUDGE = 1e-7;
    private static final int MOST_REPETITIONS = 100;
    private static final int MOST_STEPS = 20;
    private static final int MOST_ROUNDS = 20;

    private final UnaryOperator<double[]> map;
    private final double[] scale;
    private double[] state;
    private boolean found;

    private FixedPoint(UnaryOperator<double[]> map, double[] start, double[] scale) {
        this.map = map;
        this.state = start;
        this.scale = scale;
    }

    /**
     * The state; nothing where none is come to, or where the map has no value (NaN).
     *
     * @param start where to set out from
     * @param scale of each component
     */
    static Optional<double[]> of(UnaryOperator<double[]> map, double[] start, double[] scale) {
        var search = new FixedPoint(map, start, scale);
        for (int k = 0; k < MOST_ROUNDS && !search.found && !Double.isNaN(search.state[0]); k++) {
            search.repeat();
            if (!search.found) {
                search.newton();
            }
        }
        return search.found ? Optional.of(search.state) : Optional.empty();
    }

    private void repeat() {
        for (int k = 0; k < MOST_REPETITIONS && !found; k++) {
            double[] next = map.apply(state);
            found = distance(next, state) < REPEATS;
            state = next;
        }
    }

    /** Steps as long as they lead nearer. */
    private void newton() {
        double[] at = state.clone();
        double[] image = map.apply(at);
        double distance = distance(image, at);
        for (int k = 0; k < MOST_STEPS && distance >= REPEATS; k++) {
            double[] next = step(at, image);
            double[] nextImage = map.apply(next);
            double nearer = distance(nextImage, next);
            if (!(nearer < distance)) {
                return;
            }
            at = next;
            image = nextImage;
            distance = nearer;
        }
        state = image;
        found = distance < REPEATS;
    }

    private double distance(double[] one, double[] other) {
        double most = 0;
        for (int k = 0; k < one.length; k++) {
            double apart = Math.abs(one[k] - other[k]) / scale[k];
            most = Double.isNaN(apart) ? Double.POSITIVE_INFINITY : Math.max(most, apart);
        }
        return most;
    }

    /** Solves (I − J) d = image − at for the step d, J by differences. */
    private double[] step(double[] at, double[] image) {
        int n = at.length;
        double[][] rows = new double[n][n + 1];
        for (int column = 0; column < n; column++) {
            double[] nudged = at.clone();
            nudged[column] += NUDGE * scale[column];
            double[] moved = map.apply(nudged);
            for (int row = 0; row < n; row++) {
                double slope = (moved[row] - image[row]) / (NUDGE * scale[column]);
                rows[row][column] = (row == column ? 1 : 0) - slope;
            }
        }
        for (int row = 0; row < n; row++) {
            rows[row][n] = image[row] - at[row];
        }
        double[] by = eliminated(rows);
        double[] next = at.clone();
        for (int k = 0; k < n; k++) {
            next[k] += by[k];
        }
        return next;
    }

    /** Gaussian elimination with the largest pivot of each column. */
    private static double[] eliminated(double[][] rows) {
        int n = rows.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                pivot = Math.abs(rows[row][column]) > Math.abs(rows[pivot][column]) ? row : pivot;
            }
            double[] top = rows[pivot];
            rows[pivot] = rows[column];
            rows[column] = top;
            for (int row = 0; row < n; row++) {
                double factor = row == column ? 0 : rows[row][column] / top[column];
                for (int k = column; k <= n; k++) {
                    rows[row][k] -= factor * top[k];
                }
            }
        }
        double[] solution = new double[n];
        for (int k = 0; k < n; k++) {
            solution[k] = rows[k][n] / rows[k][k];
        }
        return solution;
    }
}
