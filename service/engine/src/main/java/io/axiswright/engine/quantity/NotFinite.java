package io.axiswright.engine.quantity;

/** A value that is no number, or larger than any: what absurd magnitudes of an input lead to. */
public final class NotFinite extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    NotFinite(double value) {
        super("a quantity must be finite, not " + value);
    }
}
