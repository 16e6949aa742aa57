package io.axiswright.engine.quantity;

/**
 * A linear speed.
 *
 * @param metresPerSecond the value in m/s; finite
 */
public record Speed(double metresPerSecond) implements Velocity {

    /** Refuses a value that is not finite. */
    public Speed {
        Quantity.requireFinite(metresPerSecond);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.SPEED;
    }
}
