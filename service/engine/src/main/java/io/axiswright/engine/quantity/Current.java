package io.axiswright.engine.quantity;

/**
 * An electric current.
 *
 * @param amperes the value in A; finite
 */
public record Current(double amperes) implements Quantity {

    /** Refuses a value that is not finite. */
    public Current {
        Quantity.requireFinite(amperes);
    }

    @Override
    public double si() {
        return amperes;
    }

    @Override
    public Dimension dimension() {
        return Dimension.CURRENT;
    }
}
