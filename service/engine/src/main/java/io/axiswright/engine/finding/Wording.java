package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * Quantities as a sentence shows them: four significant digits and the unit of our answers, or of its decimal parts the first
 * in which the number is not tiny (16 mm2, not 0.000016 m2).
 */
public final class Wording {

    private static final MathContext FOUR_DIGITS = new MathContext(4);

    /** Smaller numbers are tiny. */
    private static final double TINY = 0.1;

    private Wording() {}

    /** The quantity in words; "nothing" where there is none. */
    public static String of(@Nullable Quantity quantity) {
        if (quantity == null) {
            return "nothing";
        }
        Unit unit = readable(quantity);
        String number = new BigDecimal(unit.fromSi(quantity.si()))
                .round(FOUR_DIGITS)
                .stripTrailingZeros()
                .toPlainString();
        return unit.symbol().equals("1") ? number : number + " " + unit.symbol();
    }

    private static Unit readable(Quantity quantity) {
        Unit answer = Units.answerUnit(quantity.dimension());
        double magnitude = Math.abs(answer.fromSi(quantity.si()));
        if (magnitude == 0 || magnitude >= TINY) {
            return answer;
        }
        return Units.of(quantity.dimension()).stream()
                .filter(unit -> isDecimalPart(unit.factor() / answer.factor()))
                .filter(unit -> Math.abs(unit.fromSi(quantity.si())) >= TINY)
                .findFirst()
                .orElse(answer);
    }

    private static boolean isDecimalPart(double ratio) {
        double power = Math.log10(ratio);
        return ratio < 1 && Math.abs(power - Math.rint(power)) < 1e-9;
    }
}
