package io.axiswright.engine.quantity;

/**
 * A unit a caller may use for one dimension.
 *
 * @param dimension what it measures
 * @param symbol the code on the wire, in the manner of UCUM ("N.m", "lbf.in", "rev/min")
 * @param name its English name
 * @param rec20 its UN/CEFACT Recommendation 20 common code, empty where that list has none
 * @param factor the SI value of one unit
 * @param zero the reading, in this unit, of the SI scale's zero (0 but for temperatures)
 */
public record Unit(Dimension dimension, String symbol, String name, String rec20, double factor, double zero) {

    /** Converts a reading in this unit to SI. */
    public double toSi(double value) {
        return zero == 0 ? value * factor : (value - zero) * factor;
    }

    /** Converts an SI value to a reading in this unit. */
    public double fromSi(double si) {
        return zero == 0 ? si / factor : si / factor + zero;
    }
}
