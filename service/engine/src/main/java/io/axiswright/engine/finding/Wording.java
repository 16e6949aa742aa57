package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * Quantities as a sentence shows them: four significant digits and the unit of our answers, or of its decimal parts the first
 * in which the number is not tiny (16 mm2, not 0.000016 m2); speeds of shafts in revolutions per minute as well, as data sheets have them.
 */
public final class Wording {

    private static final int DIGITS = 4;

    /** What two numbers are told apart by at most; a double holds no more. */
    private static final int MOST_DIGITS = 15;

    /** Of two quantities the smaller is said in a unit of its own if it is a smaller part of the other. */
    private static final double SMALL = 1e-3;

    private static final Unit REVOLUTIONS =
            Units.find(Dimension.ANGULAR_SPEED, "rev/min").orElseThrow();

    private Wording() {}

    /** The quantity in words; "nothing" where there is none. */
    public static String of(@Nullable Quantity quantity) {
        return quantity == null ? "nothing" : of(quantity, Units.readable(quantity), DIGITS);
    }

    /**
     * Two unlike quantities of one dimension beside each other: "from 0.1093 to 0.05014". Both are in the unit of the larger, unless the
     * other would be tiny in it, and have as many digits as it takes to tell them apart.
     */
    public static String fromTo(Quantity before, Quantity after) {
        Unit first = Units.readable(before);
        Unit second = Units.readable(after);
        if (comparable(before, after)) {
            first = Units.readable(Math.abs(before.si()) > Math.abs(after.si()) ? before : after);
            second = first;
        }
        String from = of(before, first, DIGITS);
        String to = of(after, second, DIGITS);
        for (int digits = DIGITS + 1; from.equals(to) && digits <= MOST_DIGITS; digits++) {
            from = of(before, first, digits);
            to = of(after, second, digits);
        }
        return "from " + from + " to " + to;
    }

    /** A share stays one of the same kind however small it is; what is nothing is so in any unit. */
    private static boolean comparable(Quantity one, Quantity other) {
        double smaller = Math.min(Math.abs(one.si()), Math.abs(other.si()));
        double larger = Math.max(Math.abs(one.si()), Math.abs(other.si()));
        return one.dimension() == other.dimension()
                && (one instanceof Ratio || smaller == 0 || smaller >= SMALL * larger);
    }

    private static String of(Quantity quantity, Unit unit, int digits) {
        String words = number(quantity, unit, digits);
        return quantity instanceof AngularSpeed ? words + " (" + number(quantity, REVOLUTIONS, digits) + ")" : words;
    }

    private static String number(Quantity quantity, Unit unit, int digits) {
        String number = new BigDecimal(unit.fromSi(quantity.si()))
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
        return unit.symbol().equals("1") ? number : number + " " + unit.symbol();
    }
}
