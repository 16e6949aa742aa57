package io.axiswright.engine.quantity;

/**
 * A temperature on the absolute scale.
 *
 * @param kelvins the value in K; finite
 */
public record Temperature(double kelvins) implements Quantity {

    /** Refuses a value that is not finite. */
    public Temperature {
        Quantity.requireFinite(kelvins);
    }

    @Override
    public double si() {
        return kelvins;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE;
    }
}
