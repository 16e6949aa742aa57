package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonNumber;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.JsonText;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads numbers with units. */
record MeasureReading(Faults faults, NumberReading numbers) {

    private static final List<String> NAMES = List.of("value", "unit");

    @Nullable
    Object quantity(Json json, Shape.Measure shape, Path path) {
        if (!(json instanceof JsonObject object)) {
            faults.add(
                    path,
                    FaultCode.WRONG_TYPE,
                    "Not an object with value and unit, but " + json.inWords() + ".",
                    Acceptable.of(shape));
            return null;
        }
        Json[] parts = Parts.of(object, NAMES, path, faults);
        Unit unit = unit(parts[1], shape, path.member("unit"));
        if (parts[0] instanceof JsonNull) {
            faults.add(path.member("value"), FaultCode.MISSING, "There is no value.", "a number");
            return null;
        }
        double value = numbers.finite(parts[0], path.member("value"));
        return unit == null || Double.isNaN(value) ? null : inRange((JsonNumber) parts[0], value, unit, shape, path);
    }

    private @Nullable Object inRange(JsonNumber number, double value, Unit unit, Shape.Measure shape, Path path) {
        double si = shape.range().snap(unit.toSi(value));
        if (Double.isInfinite(si) || !shape.range().contains(si)) {
            faults.add(
                    path.member("value"),
                    FaultCode.OUT_OF_RANGE,
                    Excerpt.of(number.literal()) + " " + unit.symbol() + " is out of range.",
                    shape.range().inWords(unit::fromSi, unit.symbol()));
            return null;
        }
        return unit.dimension().of(si);
    }

    private @Nullable Unit unit(Json json, Shape.Measure shape, Path path) {
        String accepted = Acceptable.units(shape.dimensions());
        return switch (json) {
            case JsonText(String symbol) -> {
                Unit unit = find(shape.dimensions(), symbol).orElse(null);
                if (unit == null) {
                    faults.add(path, FaultCode.WRONG_UNIT, wrong(symbol), accepted);
                }
                yield unit;
            }
            case JsonNull _ -> {
                faults.add(path, FaultCode.MISSING, "There is no unit.", accepted);
                yield null;
            }
            default -> {
                faults.add(path, FaultCode.WRONG_TYPE, "There is " + json.inWords() + ".", accepted);
                yield null;
            }
        };
    }

    /** A symbol shared by two dimensions (K) means the one that is answered in it. */
    private static Optional<Unit> find(List<Dimension> dimensions, String symbol) {
        return dimensions.size() == 1
                ? Units.find(dimensions.getFirst(), symbol)
                : Stream.concat(
                                dimensions.stream().map(Units::answerUnit),
                                dimensions.stream().flatMap(d -> Units.of(d).stream()))
                        .filter(unit -> unit.symbol().equals(symbol))
                        .findFirst();
    }

    private static String wrong(String symbol) {
        return find(List.of(Dimension.values()), symbol)
                .map(unit -> "The unit " + symbol + " (" + unit.name() + ") measures something else.")
                .orElse("The unit " + Excerpt.quoted(symbol) + " is not known.");
    }
}
