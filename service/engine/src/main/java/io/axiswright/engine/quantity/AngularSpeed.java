package io.axiswright.engine.quantity;

/**
 * An angular speed.
 *
 * @param radiansPerSecond the value in rad/s; finite
 */
public record AngularSpeed(double radiansPerSecond) implements Velocity {

    /** Refuses a value that is not finite. */
    public AngularSpeed {
        Quantity.requireFinite(radiansPerSecond);
    }

    @Override
    public double si() {
        return radiansPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGULAR_SPEED;
    }
}
