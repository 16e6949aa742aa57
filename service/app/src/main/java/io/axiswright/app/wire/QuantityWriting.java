package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** Writes quantities: an object with value and unit. All but the digits is encoded once for each dimension. */
final class QuantityWriting implements Writing {

    private static final byte[] BEFORE = "{\"value\":".getBytes(StandardCharsets.UTF_8);
    private static final Map<Dimension, Answer> ANSWERS = answers();

    /** The unit a dimension is answered in, and what stands after the digits. */
    private record Answer(Unit unit, byte[] after) {}

    @Override
    public void write(Object value, JsonBytes json) {
        var quantity = (Quantity) value;
        Answer answer = Objects.requireNonNull(ANSWERS.get(quantity.dimension()));
        json.raw(BEFORE);
        json.number(Readings.of(quantity.si(), answer.unit()));
        json.raw(answer.after());
    }

    private static Map<Dimension, Answer> answers() {
        var answers = new EnumMap<Dimension, Answer>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            Unit unit = Units.answerUnit(dimension);
            String after = ",\"unit\":\"" + unit.symbol() + "\"}";
            answers.put(dimension, new Answer(unit, after.getBytes(StandardCharsets.UTF_8)));
        }
        return answers;
    }
}
