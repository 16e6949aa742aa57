package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.util.Arrays;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.io.SerializedString;

/** Writes the quantities of one class in one unit: an object with value and unit. */
final class QuantityWriting implements Writing {

    private static final SerializedString VALUE = new SerializedString("value");
    private static final SerializedString UNIT = new SerializedString("unit");

    private final Unit unit;
    private final SerializedString symbol;

    QuantityWriting(Unit unit) {
        this.unit = unit;
        this.symbol = new SerializedString(unit.symbol());
    }

    /** In the unit that answers state the dimension of the class in. */
    static QuantityWriting of(Class<?> type) {
        return new QuantityWriting(Units.answerUnit(Arrays.stream(Dimension.values())
                .filter(dimension -> dimension.type() == type)
                .findFirst()
                .orElseThrow()));
    }

    @Override
    public void write(Object value, JsonGenerator json) {
        write(Readings.of(((Quantity) value).si(), unit), json);
    }

    /** Writes a number in the unit. */
    void write(double number, JsonGenerator json) {
        json.writeStartObject();
        json.writeName(VALUE);
        NumberWriting.write(number, json);
        json.writeName(UNIT);
        json.writeString(symbol);
        json.writeEndObject();
    }
}
