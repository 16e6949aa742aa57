package io.axiswright.engine.quantity;

/**
 * A difference of temperatures.
 *
 * @param kelvins the value in K; finite
 */
public record TemperatureRise(double kelvins) implements Quantity {

    /** Refuses a value that is not finite. */
    public TemperatureRise {
        Quantity.requireFinite(kelvins);
    }

    @Override
    public double si() {
        return kelvins;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE_RISE;
    }
}
