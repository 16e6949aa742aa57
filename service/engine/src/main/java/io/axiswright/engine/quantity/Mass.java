package io.axiswright.engine.quantity;

/**
 * A mass.
 *
 * @param kilograms the value in kg; finite
 */
public record Mass(double kilograms) implements Payload {

    /** Refuses a value that is not finite. */
    public Mass {
        Quantity.requireFinite(kilograms);
    }

    @Override
    public double si() {
        return kilograms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }
}
