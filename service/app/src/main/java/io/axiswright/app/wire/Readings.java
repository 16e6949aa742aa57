package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** A quantity as its answer states it: a number in a unit, from which the same quantity is read back. */
final class Readings {

    private static final int MOST_DIGITS = 17;

    private Readings() {}

    /**
     * The number in that unit. A scale with its zero elsewhere (°C) or of other steps (mm2) takes the shortest number that reads
     * back as the same quantity: 36.6, not 36.60000000000002.
     */
    static double of(double si, Unit unit) {
        double value = unit.fromSi(si);
        if (unit.zero() == 0 && unit.factor() == 1) {
            return value;
        }
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
