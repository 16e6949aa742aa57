package io.axiswright.engine.quantity;

/**
 * An apparent power.
 *
 * @param voltAmperes the value in V.A; finite
 */
public record ApparentPower(double voltAmperes) implements Quantity {

    /** Refuses a value that is not finite. */
    public ApparentPower {
        Quantity.requireFinite(voltAmperes);
    }

    @Override
    public double si() {
        return voltAmperes;
    }

    @Override
    public Dimension dimension() {
        return Dimension.APPARENT_POWER;
    }
}
