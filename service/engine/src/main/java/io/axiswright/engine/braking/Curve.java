package io.axiswright.engine.braking;

/** A function of one variable that is monotone wherever a root of it is sought. */
interface Curve {

    /** Numbers nearer to each other than this share of them are as good as one. */
    double LAST_BIT = 2 * Math.ulp(1.0);

    /** The value at x. */
    double value(double x);

    /** The slope at x. */
    double slope(double x);

    /**
     * Where a curve that is monotone between the bounds reaches a target between its values there. Newton's steps, halved
     * bracket whenever a step leaves it: exact to the last bits of x.
     */
    static double reach(Curve curve, double target, double from, double to) {
        boolean rising = curve.value(to) >= curve.value(from);
        double low = from;
        double high = to;
        double x = low + (high - low) / 2;
        for (int step = 0; step < 200; step++) {
            double miss = curve.value(x) - target;
            if (miss == 0) {
                return x;
            }
            if (miss > 0 == rising) {
                high = x;
            } else {
                low = x;
            }
            double next = x - miss / curve.slope(x);
            if (!(next > low && next < high)) {
                next = low + (high - low) / 2;
            }
            if (Math.abs(next - x) <= LAST_BIT * Math.abs(x) || next <= low || next >= high) {
                return next;
            }
            x = next;
        }
        return x;
    }
}
