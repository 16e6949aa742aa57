package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** A quantity as its answer states it: a number in a unit, from which the same quantity is read back. */
final class Readings {

    private static final int MOST_DIGITS = 17;

    /** Six decimal places: what somebody chose or a table states has no more, and is found without a search. */
    private static final double PLACES = 1e6;

    private Readings() {}

    /**
     * The number in that unit. A scale with its zero elsewhere (°C) takes the shortest number that reads back as the same
     * quantity: 36.6, not 36.60000000000002. One of other steps (mm2) does so for numbers that somebody chose; those that were
     * worked out have no short form to look for.
     */
    static double of(double si, Unit unit) {
        double value = unit.fromSi(si);
        if (unit.zero() == 0 && unit.factor() == 1) {
            return value;
        }
        double rounded = Math.rint(value * PLACES) / PLACES;
        if (unit.toSi(rounded) == si) {
            return rounded;
        }
        return unit.zero() == 0 && unit.toSi(value) == si ? value : shortest(si, value, unit);
    }

    private static double shortest(double si, double value, Unit unit) {
        var exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            double shorter = exact.round(new MathContext(digits)).doubleValue();
            if (unit.toSi(shorter) == si) {
                return shorter;
            }
        }
        return value;
    }
}
