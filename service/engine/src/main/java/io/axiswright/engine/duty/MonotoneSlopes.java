package io.axiswright.engine.duty;

/**
 * Slopes of a cubic curve that never leaves the span of neighbouring points (Fritsch and Butland, A method for constructing local
 * monotone piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5 (1984); their formulas from memory).
 */
final class MonotoneSlopes {

    private MonotoneSlopes() {}

    /** The slopes at the points; at the ends by the parabola through three points, as far as that stays monotone. */
    static double[] of(double[] x, double[] y, boolean repeats) {
        int last = x.length - 1;
        double[] h = new double[last];
        double[] chord = new double[last];
        for (int k = 0; k < last; k++) {
            h[k] = x[k + 1] - x[k];
            chord[k] = (y[k + 1] - y[k]) / h[k];
        }
        double[] slope = new double[last + 1];
        for (int k = 1; k < last; k++) {
            slope[k] = mean(h[k - 1], h[k], chord[k - 1], chord[k]);
        }
        if (repeats) {
            slope[0] = mean(h[last - 1], h[0], chord[last - 1], chord[0]);
            slope[last] = slope[0];
        } else if (last == 1) {
            slope[0] = chord[0];
            slope[1] = chord[0];
        } else {
            slope[0] = end(h[0], h[1], chord[0], chord[1]);
            slope[last] = end(h[last - 1], h[last - 2], chord[last - 1], chord[last - 2]);
        }
        return slope;
    }

    private static double mean(double before, double after, double chordBefore, double chordAfter) {
        if (chordBefore * chordAfter <= 0) {
            return 0;
        }
        return 3 * (before + after) / ((2 * after + before) / chordBefore + (after + 2 * before) / chordAfter);
    }

    private static double end(double near, double far, double chordNear, double chordFar) {
        double slope = ((2 * near + far) * chordNear - near * chordFar) / (near + far);
        if (slope * chordNear <= 0) {
            return 0;
        }
        boolean turns = chordNear * chordFar < 0;
        return turns && Math.abs(slope) > 3 * Math.abs(chordNear) ? 3 * chordNear : slope;
    }
}
