package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Quantity;
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

    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private static final Unit REVOLUTIONS =
            Units.find(Dimension.ANGULAR_SPEED, "rev/min").orElseThrow();

    private Wording() {}

    /** The quantity in words; "nothing" where there is none. */
    public static String of(@Nullable Quantity quantity) {
        if (quantity == null) {
            return "nothing";
        }
        String words = of(quantity, Units.readable(quantity));
        return quantity instanceof AngularSpeed ? words + " (" + of(quantity, REVOLUTIONS) + ")" : words;
    }

    private static String of(Quantity quantity, Unit unit) {
        String number = new BigDecimal(unit.fromSi(quantity.si()))
                .round(FOUR_DIGITS)
                .stripTrailingZeros()
                .toPlainString();
        return unit.symbol().equals("1") ? number : number + " " + unit.symbol();
    }
}
