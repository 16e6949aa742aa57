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
        Range range = shape.checked(unit.dimension());
        double si = range.snap(unit.toSi(value));
        if (!range.contains(si)) {
            faults.add(
                    path.member("value"),
                    FaultCode.OUT_OF_RANGE,
                    Excerpt.of(number.literal()) + " " + unit.symbol() + " is out of range.",
                    range.inWords(unit::fromSi, unit.symbol()));
            return null;
        }
        return unit.dimension().of(si);
    }

    private @Nullable Unit unit(Json json, Shape.Measure shape, Path path) {
        Unit unit = json instanceof JsonText(String symbol) ? shape.units().get(symbol) : null;
        if (unit == null) {
            String accepted = Acceptable.words(shape.units().keySet());
            switch (json) {
                case JsonText(String symbol) -> faults.add(path, FaultCode.WRONG_UNIT, wrong(symbol), accepted);
                case JsonNull _ -> faults.add(path, FaultCode.MISSING, "There is no unit.", accepted);
                default -> faults.add(path, FaultCode.WRONG_TYPE, "There is " + json.inWords() + ".", accepted);
            }
        }
        return unit;
    }

    private static String wrong(String symbol) {
        return Stream.of(Dimension.values())
                .flatMap(dimension -> Units.find(dimension, symbol).stream())
                .findFirst()
                .map(unit -> "The unit " + symbol + " (" + unit.name() + ") measures something else.")
                .orElse("The unit " + Excerpt.quoted(symbol) + " is not known.");
    }
}
