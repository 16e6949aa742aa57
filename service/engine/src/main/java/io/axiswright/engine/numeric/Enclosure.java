package io.axiswright.engine.numeric;

/**
 * Everything a quantity may be over a rectangle of two variables, and everything its two partial derivatives may be there:
 * interval arithmetic with forward differentiation (R. E. Moore, Methods and Applications of Interval Analysis, SIAM 1979; from
 * memory, not confirmed). Certain but for rounding, which is far below what a search is asked for. On a rectangle that is one
 * point it is the quantity itself.
 *
 * @param low the least value
 * @param high the highest
 * @param byX the slopes by the first variable
 * @param byY the slopes by the second
 */
public record Enclosure(double low, double high, Range byX, Range byY) {

    /**
     * An interval.
     *
     * @param low its lower end
     * @param high its upper end
     */
    public record Range(double low, double high) {

        /** That of what is the same everywhere. */
        public static final Range NONE = new Range(0, 0);

        private static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

        private Range plus(Range other) {
            return new Range(low + other.low, high + other.high);
        }

        private Range times(double otherLow, double otherHigh) {
            double a = low * otherLow;
            double b = low * otherHigh;
            double c = high * otherLow;
            double d = high * otherHigh;
            return new Range(Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
        }

        private Range times(Range other) {
            return times(other.low, other.high);
        }

        private Range times(double factor) {
            return factor < 0 ? new Range(factor * high, factor * low) : new Range(factor * low, factor * high);
        }

        private double magnitude() {
            return Math.max(Math.abs(low), Math.abs(high));
        }
    }

    /** What is the same everywhere. */
    public static Enclosure of(double value) {
        return new Enclosure(value, value, Range.NONE, Range.NONE);
    }

    /** What is known to lie between two values, and nothing of its slopes. */
    public static Enclosure between(double low, double high) {
        return new Enclosure(low, high, Range.ANY, Range.ANY);
    }

    /** Of a function of another quantity: its values over that quantity's, and its slopes by it there. */
    public Enclosure through(double least, double most, double leastSlope, double mostSlope) {
        return new Enclosure(least, most, byX.times(leastSlope, mostSlope), byY.times(leastSlope, mostSlope));
    }

    /** The sum of two. */
    public Enclosure plus(Enclosure other) {
        return new Enclosure(low + other.low, high + other.high, byX.plus(other.byX), byY.plus(other.byY));
    }

    /** Moved by a constant. */
    public Enclosure plus(double constant) {
        return new Enclosure(low + constant, high + constant, byX, byY);
    }

    /** Times a constant. */
    public Enclosure times(double factor) {
        return factor < 0
                ? new Enclosure(factor * high, factor * low, byX.times(factor), byY.times(factor))
                : new Enclosure(factor * low, factor * high, byX.times(factor), byY.times(factor));
    }

    /** The product of two. */
    public Enclosure times(Enclosure other) {
        Range value = values().times(other.values());
        return new Enclosure(
                value.low,
                value.high,
                byX.times(other.values()).plus(other.byX.times(values())),
                byY.times(other.values()).plus(other.byY.times(values())));
    }

    /** The square, which is never negative. */
    public Enclosure squared() {
        double least = low <= 0 && high >= 0 ? 0 : Math.min(low * low, high * high);
        return through(least, Math.max(low * low, high * high), 2 * low, 2 * high);
    }

    /** One over a quantity that is positive throughout. */
    public Enclosure inverse() {
        return through(1 / high, 1 / low, -1 / (low * low), -1 / (high * high));
    }

    /** The root of a quantity that is positive throughout. */
    public Enclosure root() {
        double least = Math.sqrt(low);
        double most = Math.sqrt(high);
        return through(least, most, 0.5 / most, 0.5 / least);
    }

    /** The sine. */
    public Enclosure sine() {
        Range sine = sine(low, high);
        Range cosine = sine(low + Math.PI / 2, high + Math.PI / 2);
        return through(sine.low, sine.high, cosine.low, cosine.high);
    }

    /** The cosine. */
    public Enclosure cosine() {
        return plus(Math.PI / 2).sine();
    }

    /** The quantity times one factor where it is negative and times another where it is positive. */
    public Enclosure bent(double below, double above) {
        if (low >= 0) {
            return times(above);
        }
        if (high <= 0) {
            return times(below);
        }
        return through(
                Math.min(0, Math.min(below * low, above * high)),
                Math.max(0, Math.max(below * low, above * high)),
                Math.min(below, above),
                Math.max(below, above));
    }

    /** The magnitude. */
    public Enclosure magnitude() {
        return bent(-1, 1);
    }

    /** The quantity, but never less than a constant. */
    public Enclosure atLeast(double least) {
        return plus(-least).bent(0, 1).plus(least);
    }

    /** An upper bound over a rectangle of those half widths around a point at which the quantity has that value. */
    public double bound(double atMiddle, double halfX, double halfY) {
        double bound = atMiddle + byX.magnitude() * halfX + byY.magnitude() * halfY;
        return bound < high ? bound : high;
    }

    /**
     * How far at most, on any line along the first variable across a rectangle of that half width, the quantity leaves the
     * straight line between its values at both ends: a function whose slopes lie between m and M does so by no more than a
     * quarter of (M − m) times the width, corners or none, and none by more than all its values differ by.
     */
    public double bendByX(double halfX) {
        double bend = (byX.high - byX.low) * halfX / 2;
        return bend < high - low ? bend : high - low;
    }

    /** Whether it may jump along the first variable: nothing is known of its slopes. */
    public boolean jumpsByX() {
        return !(byX.high - byX.low < Double.POSITIVE_INFINITY);
    }

    private Range values() {
        return new Range(low, high);
    }

    private static Range sine(double from, double to) {
        double one = Math.sin(from);
        double other = Math.sin(to);
        double least = passes(from, to, -Math.PI / 2) ? -1 : Math.min(one, other);
        double most = passes(from, to, Math.PI / 2) ? 1 : Math.max(one, other);
        return new Range(least, most);
    }

    private static boolean passes(double from, double to, double angle) {
        return Math.floor((to - angle) / (2 * Math.PI)) > Math.floor((from - angle) / (2 * Math.PI));
    }
}
