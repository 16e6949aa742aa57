package io.axiswright.engine.quantity;

/**
 * A resistance per length of conductor.
 *
 * @param ohmsPerMetre the value in Ohm/m; finite
 */
public record LineResistance(double ohmsPerMetre) implements Quantity {

    /** Refuses a value that is not finite. */
    public LineResistance {
        Quantity.requireFinite(ohmsPerMetre);
    }

    @Override
    public double si() {
        return ohmsPerMetre;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LINE_RESISTANCE;
    }
}
