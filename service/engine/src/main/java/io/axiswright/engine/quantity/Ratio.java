package io.axiswright.engine.quantity;

/**
 * A dimensionless number.
 *
 * @param value the value in 1; finite
 */
public record Ratio(double value) implements Quantity {

    /** Refuses a value that is not finite. */
    public Ratio {
        Quantity.requireFinite(value);
    }

    @Override
    public double si() {
        return value;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RATIO;
    }
}
