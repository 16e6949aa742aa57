package io.axiswright.app.wire;

import io.axiswright.app.wire.Shape.Digits;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.math.BigDecimal;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** The shapes of the types that are not taken apart into members. */
final class LeafShapes {

    private static final Map<Class<?>, Shape> FIXED = Map.ofEntries(
            Map.entry(boolean.class, new Shape.Truth()),
            Map.entry(Boolean.class, new Shape.Truth()),
            Map.entry(Money.class, new Shape.Price()),
            Map.entry(ConductorSize.class, new Shape.Size()),
            Map.entry(Polynomial.class, new Shape.Coefficients()),
            Map.entry(Object.class, new Shape.Any()),
            Map.entry(JsonNode.class, new Shape.Any()),
            Map.entry(URI.class, new Shape.Token("uri-reference", "a URI reference of RFC 3986", URI::create)),
            Map.entry(UUID.class, new Shape.Token("uuid", "a UUID", UUID::fromString)),
            Map.entry(Instant.class, new Shape.Token("date-time", "a time stamp of RFC 3339", Instant::parse)),
            Map.entry(LocalDate.class, new Shape.Token("date", "a date as 2026-01-31", LocalDate::parse)));

    private static final Map<Class<?>, Digits> NUMBERS = Map.of(
            int.class, Digits.INTEGER,
            Integer.class, Digits.INTEGER,
            long.class, Digits.LONG,
            Long.class, Digits.LONG,
            double.class, Digits.REAL,
            Double.class, Digits.REAL,
            BigDecimal.class, Digits.DECIMAL);

    private LeafShapes() {}

    /** The shape of a class that is not taken apart; null for all others. */
    static @Nullable Shape of(Class<?> type, Range range, int maxLength) {
        if (type == String.class) {
            return new Shape.Text(maxLength);
        }
        if (Quantity.class.isAssignableFrom(type)) {
            return measure(type, range);
        }
        Digits digits = NUMBERS.get(type);
        if (digits != null) {
            return new Shape.Plain(digits, range);
        }
        return type.isEnum() ? word(type) : FIXED.get(type);
    }

    private static Shape measure(Class<?> type, Range range) {
        List<Dimension> dimensions = Arrays.stream(Dimension.values())
                .filter(d -> type.isAssignableFrom(d.type()))
                .toList();
        var units = new LinkedHashMap<String, Unit>();
        dimensions.stream().flatMap(d -> Units.of(d).stream()).forEach(unit -> units.putIfAbsent(unit.symbol(), unit));
        // a symbol shared by two dimensions (K) means the one that is answered in it
        dimensions.stream().map(Units::answerUnit).forEach(unit -> units.put(unit.symbol(), unit));
        return new Shape.Measure(dimensions, range, units);
    }

    private static Shape word(Class<?> type) {
        var words = new LinkedHashMap<String, Object>();
        for (Object constant : type.getEnumConstants()) {
            words.put(wireName((Enum<?>) constant), constant);
        }
        return new Shape.Word(type, words);
    }

    /** What an enum constant is called on the wire. */
    static String wireName(Enum<?> constant) {
        return constant instanceof FindingCode finding ? finding.code() : constant.name();
    }
}
