package io.axiswright.engine.quantity;

/**
 * A heat capacity.
 *
 * @param joulesPerKelvin the value in J/K; finite
 */
public record HeatCapacity(double joulesPerKelvin) implements Quantity {

    /** Refuses a value that is not finite. */
    public HeatCapacity {
        Quantity.requireFinite(joulesPerKelvin);
    }

    @Override
    public double si() {
        return joulesPerKelvin;
    }

    @Override
    public Dimension dimension() {
        return Dimension.HEAT_CAPACITY;
    }
}
