package io.axiswright.engine.quantity;

/**
 * A viscous friction torque per angular speed.
 *
 * @param newtonMetreSeconds the value in N.m.s/rad; finite
 */
public record RotaryDamping(double newtonMetreSeconds) implements Quantity {

    /** Refuses a value that is not finite. */
    public RotaryDamping {
        Quantity.requireFinite(newtonMetreSeconds);
    }

    @Override
    public double si() {
        return newtonMetreSeconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ROTARY_DAMPING;
    }
}
