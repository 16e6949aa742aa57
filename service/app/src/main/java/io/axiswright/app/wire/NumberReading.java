package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonNumber;
import io.axiswright.engine.finding.FaultCode;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.io.NumberInput;

/** Reads plain numbers. */
record NumberReading(Faults faults) {

    private static final int DIGITS_BEFORE_POINT = 15;
    private static final int DIGITS_AFTER_POINT = 6;

    @Nullable
    Object number(Json json, Shape.Plain plain, Path path) {
        if (!(json instanceof JsonNumber(String literal))) {
            faults.add(path, FaultCode.WRONG_TYPE, "There is " + json.inWords() + ".", Acceptable.of(plain));
            return null;
        }
        return switch (plain.digits()) {
            case REAL -> {
                int before = faults.count();
                double value = real(json, plain.checked(), path);
                yield faults.count() == before ? value : null;
            }
            case INTEGER, LONG -> whole(literal, plain, path);
            case DECIMAL -> inRange(decimal(literal, path, Acceptable.of(plain)), literal, plain, path);
        };
    }

    /** A binary number in a range; NaN once a fault is noted. */
    double real(Json json, Range range, Path path) {
        double value = finite(json, path);
        if (!Double.isNaN(value)) {
            value = range.snap(value);
            if (!range.contains(value)) {
                outOfRange(((JsonNumber) json).literal(), range.inWords(x -> x, ""), path);
                return Double.NaN;
            }
        }
        return value;
    }

    /** A binary number; NaN once a fault is noted. */
    double finite(Json json, Path path) {
        if (!(json instanceof JsonNumber(String literal))) {
            faults.add(path, FaultCode.WRONG_TYPE, "There is " + json.inWords() + ".", "a number");
            return Double.NaN;
        }
        double value = NumberInput.parseDouble(literal, true);
        if (Double.isInfinite(value)) {
            outOfRange(literal, "a number below 1.8e308", path);
            return Double.NaN;
        }
        return value;
    }

    /** A decimal number of a size that can be written out; null once a fault is noted. */
    @Nullable
    BigDecimal decimal(String literal, Path path, String accepted) {
        BigDecimal value = new BigDecimal(literal);
        long before = (long) value.precision() - value.scale();
        if (before > DIGITS_BEFORE_POINT || value.scale() > DIGITS_AFTER_POINT) {
            outOfRange(literal, accepted, path);
            return null;
        }
        // a zero may carry any exponent
        return value.scale() >= 0 ? value : value.signum() == 0 ? BigDecimal.ZERO : value.setScale(0);
    }

    /** Notes a number that makes no sense at a place. */
    void outOfRange(String number, String accepted, Path path) {
        faults.add(path, FaultCode.OUT_OF_RANGE, "The number " + Excerpt.of(number) + " is out of range.", accepted);
    }

    private @Nullable Object whole(String literal, Shape.Plain plain, Path path) {
        try {
            // both throw ArithmeticException for fractions and for what does not fit
            BigDecimal value = new BigDecimal(literal);
            Object whole = plain.digits() == Shape.Digits.INTEGER
                    ? (Object) value.intValueExact()
                    : (Object) value.longValueExact();
            return inRange(value, literal, plain, path) == null ? null : whole;
        } catch (ArithmeticException _) {
            outOfRange(literal, Acceptable.of(plain), path);
            return null;
        }
    }

    private @Nullable BigDecimal inRange(@Nullable BigDecimal value, String literal, Shape.Plain plain, Path path) {
        if (value != null && !plain.checked().contains(value.doubleValue())) {
            outOfRange(literal, Acceptable.of(plain), path);
            return null;
        }
        return value;
    }
}
