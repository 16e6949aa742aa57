package io.axiswright.engine.quantity;

/**
 * A torque.
 *
 * @param newtonMetres the value in N.m; finite
 */
public record Torque(double newtonMetres) implements Effort {

    /** Refuses a value that is not finite. */
    public Torque {
        Quantity.requireFinite(newtonMetres);
    }

    @Override
    public double si() {
        return newtonMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TORQUE;
    }
}
