package io.axiswright.engine.quantity;

/**
 * A linear acceleration.
 *
 * @param metresPerSecondSquared the value in m/s2; finite
 */
public record LinearAcceleration(double metresPerSecondSquared) implements Acceleration {

    /** Refuses a value that is not finite. */
    public LinearAcceleration {
        Quantity.requireFinite(metresPerSecondSquared);
    }

    @Override
    public double si() {
        return metresPerSecondSquared;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LINEAR_ACCELERATION;
    }
}
