package io.axiswright.engine.quantity;

/**
 * An area or cross-section.
 *
 * @param squareMetres the value in m2; finite
 */
public record Area(double squareMetres) implements Quantity {

    /** Refuses a value that is not finite. */
    public Area {
        Quantity.requireFinite(squareMetres);
    }

    @Override
    public double si() {
        return squareMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }
}
