package io.axiswright.engine.quantity;

/**
 * A thermal resistance.
 *
 * @param kelvinsPerWatt the value in K/W; finite
 */
public record ThermalResistance(double kelvinsPerWatt) implements Quantity {

    /** Refuses a value that is not finite. */
    public ThermalResistance {
        Quantity.requireFinite(kelvinsPerWatt);
    }

    @Override
    public double si() {
        return kelvinsPerWatt;
    }

    @Override
    public Dimension dimension() {
        return Dimension.THERMAL_RESISTANCE;
    }
}
