package io.axiswright.engine.quantity;

/**
 * A torsional stiffness.
 *
 * @param newtonMetresPerRadian the value in N.m/rad; finite
 */
public record Stiffness(double newtonMetresPerRadian) implements Quantity {

    /** Refuses a value that is not finite. */
    public Stiffness {
        Quantity.requireFinite(newtonMetresPerRadian);
    }

    @Override
    public double si() {
        return newtonMetresPerRadian;
    }

    @Override
    public Dimension dimension() {
        return Dimension.STIFFNESS;
    }
}
