package io.axiswright.engine.quantity;

/**
 * A voltage.
 *
 * @param volts the value in V; finite
 */
public record Voltage(double volts) implements Quantity {

    /** Refuses a value that is not finite. */
    public Voltage {
        Quantity.requireFinite(volts);
    }

    @Override
    public double si() {
        return volts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLTAGE;
    }
}
