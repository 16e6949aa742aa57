package io.axiswright.engine.quantity;

/**
 * A viscous friction force per speed.
 *
 * @param newtonSecondsPerMetre the value in N.s/m; finite
 */
public record LinearDamping(double newtonSecondsPerMetre) implements Quantity {

    /** Refuses a value that is not finite. */
    public LinearDamping {
        Quantity.requireFinite(newtonSecondsPerMetre);
    }

    @Override
    public double si() {
        return newtonSecondsPerMetre;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LINEAR_DAMPING;
    }
}
