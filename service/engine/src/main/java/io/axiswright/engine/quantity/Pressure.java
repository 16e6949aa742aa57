package io.axiswright.engine.quantity;

/**
 * A pressure or mechanical stress.
 *
 * @param pascals the value in Pa; finite
 */
public record Pressure(double pascals) implements Quantity {

    /** Refuses a value that is not finite. */
    public Pressure {
        Quantity.requireFinite(pascals);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Dimension dimension() {
        return Dimension.PRESSURE;
    }
}
