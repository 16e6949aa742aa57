package io.axiswright.app.wire;

import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import java.util.Collection;
import java.util.Map;
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
    static void write(Object value, JsonBytes json) {
        of(value.getClass()).write(value, json);
    }

    @Override
    protected Writing computeValue(Class<?> type) {
        if (Quantity.class.isAssignableFrom(type)) {
            return new QuantityWriting(type);
        }
        if (type == ConductorSize.class) {
            return (value, json) -> json.text(((ConductorSize) value).label());
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
            return (value, json) -> json.number((Double) value);
        }
        if (Number.class.isAssignableFrom(type) || type == Boolean.class || JsonNode.class.isAssignableFrom(type)) {
            return (value, json) -> json.raw(value.toString());
        }
        if (Enum.class.isAssignableFrom(type)) {
            return (value, json) -> json.text(LeafShapes.wireName((Enum<?>) value));
        }
        // texts, and what has a standard form as a text: time stamps, UUIDs, URI references
        return (value, json) -> json.text(value.toString());
    }

    private static void list(Collection<?> list, JsonBytes json) {
        json.mark('[');
        for (Object element : list) {
            write(element, json);
            json.mark(',');
        }
        json.close(']');
    }

    private static void table(Map<?, ?> table, JsonBytes json) {
        json.mark('{');
        table.forEach((name, value) -> {
            json.name(name.toString());
            write(value, json);
            json.mark(',');
        });
        json.close('}');
    }

    private static void money(Money money, JsonBytes json) {
        json.mark('{');
        json.name("amount");
        json.text(money.amount().toPlainString());
        json.mark(',');
        json.name("currency");
        json.text(money.currency());
        json.mark('}');
    }

    private static void polynomial(Polynomial polynomial, JsonBytes json) {
        json.mark('[');
        for (int power = 0; power <= polynomial.degree(); power++) {
            json.number(polynomial.coefficient(power));
            json.mark(',');
        }
        json.close(']');
    }
}
