package io.axiswright.engine.quantity;

/**
 * A let-through or withstand I²t.
 *
 * @param ampereSquaredSeconds the value in A2.s; finite
 */
public record JouleIntegral(double ampereSquaredSeconds) implements Quantity {

    /** Refuses a value that is not finite. */
    public JouleIntegral {
        Quantity.requireFinite(ampereSquaredSeconds);
    }

    @Override
    public double si() {
        return ampereSquaredSeconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.JOULE_INTEGRAL;
    }
}
