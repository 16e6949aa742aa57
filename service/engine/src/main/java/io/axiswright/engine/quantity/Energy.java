package io.axiswright.engine.quantity;

/**
 * An energy.
 *
 * @param joules the value in J; finite
 */
public record Energy(double joules) implements Quantity {

    /** Refuses a value that is not finite. */
    public Energy {
        Quantity.requireFinite(joules);
    }

    @Override
    public double si() {
        return joules;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ENERGY;
    }
}
