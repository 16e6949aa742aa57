package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.util.Arrays;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.io.SerializedString;

/**
 * Writes the quantities of one class: an object with value and unit. Areas are those of conductors for the most part: small ones
 * in mm2.
 */
final class QuantityWriting implements Writing {

    private static final SerializedString VALUE = new SerializedString("value");
    private static final SerializedString UNIT = new SerializedString("unit");

    private final Unit unit;
    private final SerializedString symbol;

    QuantityWriting(Class<?> type) {
        unit = Units.answerUnit(Arrays.stream(Dimension.values())
                .filter(dimension -> dimension.type() == type)
                .findFirst()
                .orElseThrow());
        symbol = new SerializedString(unit.symbol());
    }

    @Override
    public void write(Object value, JsonGenerator json) {
        Unit readable = value instanceof Area area ? Units.readable(area) : unit;
        if (readable.equals(unit) || !readsBack((Quantity) value, readable)) {
            write((Quantity) value, unit, symbol, json);
        } else {
            write((Quantity) value, readable, new SerializedString(readable.symbol()), json);
        }
    }

    /** What is stored must be read as the very same quantity. */
    private static boolean readsBack(Quantity quantity, Unit unit) {
        return unit.toSi(Readings.of(quantity.si(), unit)) == quantity.si();
    }

    private static void write(Quantity quantity, Unit unit, SerializedString symbol, JsonGenerator json) {
        json.writeStartObject();
        json.writeName(VALUE);
        NumberWriting.write(Readings.of(quantity.si(), unit), json);
        json.writeName(UNIT);
        json.writeString(symbol);
        json.writeEndObject();
    }
}
