package io.axiswright.engine.quantity;

/**
 * An active power.
 *
 * @param watts the value in W; finite
 */
public record Power(double watts) implements Quantity {

    /** Refuses a value that is not finite. */
    public Power {
        Quantity.requireFinite(watts);
    }

    @Override
    public double si() {
        return watts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }
}
