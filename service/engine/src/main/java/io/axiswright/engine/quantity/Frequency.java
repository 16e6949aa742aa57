package io.axiswright.engine.quantity;

/**
 * A frequency or a rate of events.
 *
 * @param hertz the value in Hz; finite
 */
public record Frequency(double hertz) implements Quantity {

    /** Refuses a value that is not finite. */
    public Frequency {
        Quantity.requireFinite(hertz);
    }

    @Override
    public double si() {
        return hertz;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FREQUENCY;
    }
}
