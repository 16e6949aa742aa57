package io.axiswright.engine.quantity;

/**
 * An angular acceleration.
 *
 * @param radiansPerSecondSquared the value in rad/s2; finite
 */
public record AngularAcceleration(double radiansPerSecondSquared) implements Acceleration {

    /** Refuses a value that is not finite. */
    public AngularAcceleration {
        Quantity.requireFinite(radiansPerSecondSquared);
    }

    @Override
    public double si() {
        return radiansPerSecondSquared;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGULAR_ACCELERATION;
    }
}
