package io.axiswright.engine.condition;

/** How a number is held against another. */
public enum Relation {
    /** Less. */
    BELOW,
    /** Less, or the same. */
    AT_MOST,
    /** The same. */
    EQUAL,
    /** More, or the same. */
    AT_LEAST,
    /** More. */
    ABOVE;

    /** Share of the greater number below which two differ by their units' conversion only. */
    private static final double ROUNDING = 1e-9;

    /** Whether a value stands so to a limit; what differs by rounding alone is the same. */
    public boolean holds(double value, double limit) {
        boolean same = Math.abs(value - limit) <= ROUNDING * Math.max(Math.abs(value), Math.abs(limit));
        return switch (this) {
            case BELOW -> !same && value < limit;
            case AT_MOST -> same || value < limit;
            case EQUAL -> same;
            case AT_LEAST -> same || value > limit;
            case ABOVE -> !same && value > limit;
        };
    }
}
