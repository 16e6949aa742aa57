package io.axiswright.engine.quantity;

/**
 * A capacitance.
 *
 * @param farads the value in F; finite
 */
public record Capacitance(double farads) implements Quantity {

    /** Refuses a value that is not finite. */
    public Capacitance {
        Quantity.requireFinite(farads);
    }

    @Override
    public double si() {
        return farads;
    }

    @Override
    public Dimension dimension() {
        return Dimension.CAPACITANCE;
    }
}
