package io.axiswright.engine.quantity;

/**
 * An angular jerk: the rate at which angular acceleration changes.
 *
 * @param radiansPerSecondCubed the value in rad/s3; finite
 */
public record AngularJerk(double radiansPerSecondCubed) implements Jerk {

    /** Refuses a value that is not finite. */
    public AngularJerk {
        Quantity.requireFinite(radiansPerSecondCubed);
    }

    @Override
    public double si() {
        return radiansPerSecondCubed;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGULAR_JERK;
    }
}
