package io.axiswright.engine.quantity;

/**
 * A force.
 *
 * @param newtons the value in N; finite
 */
public record Force(double newtons) implements Effort {

    /** Refuses a value that is not finite. */
    public Force {
        Quantity.requireFinite(newtons);
    }

    @Override
    public double si() {
        return newtons;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FORCE;
    }
}
