package io.axiswright.engine.quantity;

/**
 * A span of time.
 *
 * @param seconds the value in s; finite
 */
public record Time(double seconds) implements Quantity {

    /** Refuses a value that is not finite. */
    public Time {
        Quantity.requireFinite(seconds);
    }

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TIME;
    }
}
