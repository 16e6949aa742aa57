package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Dimension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The numbers that make sense at a place.
 *
 * @param above exclusive lower bound, −∞ if there is none
 * @param min inclusive lower bound, −∞ if there is none
 * @param max inclusive upper bound, +∞ if there is none
 */
public record Range(double above, double min, double max) {

    /** Every number. */
    public static final Range ANY =
            new Range(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    private static final MathContext SHOWN = new MathContext(6);
    private static final double PLAIN_FROM = 1e-6;
    private static final double PLAIN_BELOW = 1e9;
    /** A bound stated in another unit may miss by the rounding of its conversion. */
    private static final double ROUNDING = 1e-12;

    /** The range an annotation states; every number if there is none. */
    static Range of(@Nullable Bounds bounds) {
        return bounds == null ? ANY : new Range(bounds.above(), bounds.min(), bounds.max());
    }

    /** What is left of it within what a quantity can be at all; where zero is excluded, so is all below the least magnitude. */
    Range within(Dimension dimension) {
        double top = Math.min(max, dimension.most());
        return above >= 0 && above < dimension.least()
                ? new Range(Double.NEGATIVE_INFINITY, Math.max(min, dimension.least()), top)
                : new Range(above, Math.max(min, -dimension.most()), top);
    }

    /** Whether every number is in the range. */
    public boolean isAny() {
        return equals(ANY);
    }

    /** The number moved onto an inclusive bound which it passes by no more than the rounding of a conversion. */
    double snap(double value) {
        if (value < min && value >= min - Math.abs(min) * ROUNDING) {
            return min;
        }
        return value > max && value <= max + Math.abs(max) * ROUNDING ? max : value;
    }

    /** Whether the number is in the range. */
    boolean contains(double value) {
        return value > above && value >= min && value <= max;
    }

    /** The range in words, its bounds converted and followed by a unit: "above 0 and at most 500 mm". */
    public String inWords(DoubleUnaryOperator conversion, String unit) {
        var parts = new ArrayList<String>();
        if (above != Double.NEGATIVE_INFINITY) {
            parts.add("above " + shown(conversion.applyAsDouble(above)));
        }
        if (min != Double.NEGATIVE_INFINITY) {
            parts.add("at least " + shown(conversion.applyAsDouble(min)));
        }
        if (max != Double.POSITIVE_INFINITY) {
            parts.add("at most " + shown(conversion.applyAsDouble(max)));
        }
        String words = parts.isEmpty() ? "any number" : String.join(" and ", parts);
        return unit.equals("1") || unit.isEmpty() ? words : words + " " + unit;
    }

    private static String shown(double value) {
        var number = new BigDecimal(value).round(SHOWN).stripTrailingZeros();
        // 0.0001 is read more easily than 1E-4, 1E-12 more easily than all its zeros
        boolean plain = value == 0 || Math.abs(value) >= PLAIN_FROM && Math.abs(value) < PLAIN_BELOW;
        return plain ? number.toPlainString() : number.toString();
    }
}
