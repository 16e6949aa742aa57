package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Writes the quantities of one class: an object with value and unit. All but the digits is encoded once. */
final class QuantityWriting implements Writing {

    private static final byte[] BEFORE = "{\"value\":".getBytes(StandardCharsets.UTF_8);

    private final Unit unit;
    private final byte[] after;

    QuantityWriting(Class<?> type) {
        unit = Units.answerUnit(Arrays.stream(Dimension.values())
                .filter(dimension -> dimension.type() == type)
                .findFirst()
                .orElseThrow());
        after = (",\"unit\":\"" + unit.symbol() + "\"}").getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public void write(Object value, JsonBytes json) {
        json.raw(BEFORE);
        json.number(Readings.of(((Quantity) value).si(), unit));
        json.raw(after);
    }
}
