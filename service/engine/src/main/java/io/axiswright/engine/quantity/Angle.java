package io.axiswright.engine.quantity;

/**
 * A plane angle.
 *
 * @param radians the value in rad; finite
 */
public record Angle(double radians) implements Displacement {

    /** Refuses a value that is not finite. */
    public Angle {
        Quantity.requireFinite(radians);
    }

    @Override
    public double si() {
        return radians;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }
}
