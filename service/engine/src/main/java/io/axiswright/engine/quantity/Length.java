package io.axiswright.engine.quantity;

/**
 * A length, distance or height.
 *
 * @param metres the value in m; finite
 */
public record Length(double metres) implements Displacement {

    /** Refuses a value that is not finite. */
    public Length {
        Quantity.requireFinite(metres);
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }
}
