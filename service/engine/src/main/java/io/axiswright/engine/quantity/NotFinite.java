package io.axiswright.engine.quantity;

/** A value that is no number, or larger than any: what absurd magnitudes of an input lead to. */
public final class NotFinite extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Of a value that would be a quantity. */
    NotFinite(double value) {
        super("a quantity must be finite, not " + value);
    }

    /** Of a function between two points of its argument. */
    public NotFinite(double from, double to) {
        super("a function must be finite between " + from + " and " + to);
    }
}
