package io.axiswright.engine.quantity;

/**
 * A linear jerk: the rate at which acceleration changes.
 *
 * @param metresPerSecondCubed the value in m/s3; finite
 */
public record LinearJerk(double metresPerSecondCubed) implements Jerk {

    /** Refuses a value that is not finite. */
    public LinearJerk {
        Quantity.requireFinite(metresPerSecondCubed);
    }

    @Override
    public double si() {
        return metresPerSecondCubed;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LINEAR_JERK;
    }
}
