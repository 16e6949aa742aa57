package io.axiswright.engine.quantity;

/**
 * A resistance, reactance or impedance.
 *
 * @param ohms the value in Ohm; finite
 */
public record Resistance(double ohms) implements Quantity {

    /** Refuses a value that is not finite. */
    public Resistance {
        Quantity.requireFinite(ohms);
    }

    @Override
    public double si() {
        return ohms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RESISTANCE;
    }
}
