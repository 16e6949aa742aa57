package io.axiswright.engine.quantity;

/**
 * A mass moment of inertia.
 *
 * @param kilogramSquareMetres the value in kg.m2; finite
 */
public record Inertia(double kilogramSquareMetres) implements Payload {

    /** Refuses a value that is not finite. */
    public Inertia {
        Quantity.requireFinite(kilogramSquareMetres);
    }

    @Override
    public double si() {
        return kilogramSquareMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.INERTIA;
    }
}
