package io.axiswright.app.wire;

import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JsonNode;

/** How values are written, worked out once for each class. */
final class Writings extends ClassValue<Writing> {

    private static final Writings KNOWN = new Writings();

    private Writings() {}

    /** How the values of a class are written. */
    static Writing of(Class<?> type) {
        return KNOWN.get(type);
    }

    /** Writes a value as its own class says. */
    static void write(Object value, JsonGenerator json) {
        of(value.getClass()).write(value, json);
    }

    @Override
    protected Writing computeValue(Class<?> type) {
        if (Quantity.class.isAssignableFrom(type)) {
            return type == Area.class ? new AreaWriting() : QuantityWriting.of(type);
        }
        if (type == ConductorSize.class) {
            return (value, json) -> json.writeString(((ConductorSize) value).label());
        }
        if (type == Money.class) {
            return (value, json) -> money((Money) value, json);
        }
        if (type == Polynomial.class) {
            return (value, json) -> polynomial((Polynomial) value, json);
        }
        if (type.isRecord()) {
            return new RecordWriting(type);
        }
        if (Collection.class.isAssignableFrom(type)) {
            return (value, json) -> list((Collection<?>) value, json);
        }
        if (Map.class.isAssignableFrom(type)) {
            return (value, json) -> table((Map<?, ?>) value, json);
        }
        return leaf(type);
    }

    private static Writing leaf(Class<?> type) {
        if (type == Double.class) {
            return (value, json) -> NumberWriting.write((Double) value, json);
        }
        if (type == Integer.class) {
            return (value, json) -> json.writeNumber((Integer) value);
        }
        if (type == Long.class) {
            return (value, json) -> json.writeNumber((Long) value);
        }
        if (type == BigDecimal.class) {
            return (value, json) -> json.writeNumber((BigDecimal) value);
        }
        if (type == Boolean.class) {
            return (value, json) -> json.writeBoolean((Boolean) value);
        }
        if (JsonNode.class.isAssignableFrom(type)) {
            return (value, json) -> json.writeTree((JsonNode) value);
        }
        if (Enum.class.isAssignableFrom(type)) {
            return (value, json) -> json.writeString(LeafShapes.wireName((Enum<?>) value));
        }
        // texts, and what has a standard form as a text: time stamps, UUIDs, URI references
        return (value, json) -> json.writeString(value.toString());
    }

    private static void list(Collection<?> list, JsonGenerator json) {
        json.writeStartArray();
        LastWriting last = LastWriting.NONE;
        for (Object element : list) {
            last = last.orOf(element);
            last.writing().write(element, json);
        }
        json.writeEndArray();
    }

    private static void table(Map<?, ?> table, JsonGenerator json) {
        json.writeStartObject();
        LastWriting last = LastWriting.NONE;
        for (Map.Entry<?, ?> entry : table.entrySet()) {
            json.writeName(entry.getKey().toString());
            last = last.orOf(entry.getValue());
            last.writing().write(entry.getValue(), json);
        }
        json.writeEndObject();
    }

    private static void money(Money money, JsonGenerator json) {
        json.writeStartObject();
        json.writeStringProperty("amount", money.amount().toPlainString());
        json.writeStringProperty("currency", money.currency());
        json.writeEndObject();
    }

    private static void polynomial(Polynomial polynomial, JsonGenerator json) {
        json.writeStartArray();
        for (int power = 0; power <= polynomial.degree(); power++) {
            json.writeNumber(polynomial.coefficient(power));
        }
        json.writeEndArray();
    }
}
