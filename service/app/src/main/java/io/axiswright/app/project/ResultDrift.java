package io.axiswright.app.project;

import io.axiswright.engine.comparison.ChangeKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Holds two results against each other as they stand on the wire: a stored one may have members that the records of today do
 * not know any more. Exact, because the engine gives the same answer to the same input, byte for byte.
 */
final class ResultDrift {

    /** Members that name an element among its siblings, best first. */
    private static final List<String> KEYS = List.of("id", "axis", "circuit", "node", "item", "name", "symbol");

    private static final String VALUE = "value";
    private static final String UNIT = "unit";

    private final List<Drift> moved = new ArrayList<>();
    private int compared;

    /** Compares two results; members of the given names, of the results themselves, are passed over. */
    ResultDrift(JsonNode before, JsonNode after, Set<String> passedOver) {
        for (String name : names(before, after)) {
            if (!passedOver.contains(name)) {
                compare("/" + name, before.get(name), after.get(name));
            }
        }
    }

    /** How many values were compared. */
    int compared() {
        return compared;
    }

    /** Those that are not the same. */
    List<Drift> moved() {
        return moved;
    }

    private void compare(String path, @Nullable JsonNode before, @Nullable JsonNode after) {
        if (before == null || after == null) {
            compared++;
            moved.add(new Drift(path, before == null ? ChangeKind.ADDED : ChangeKind.REMOVED, before, after, null));
        } else if (isTree(before) && isTree(after)) {
            for (String name : names(before, after)) {
                compare(path + "/" + escaped(name), before.get(name), after.get(name));
            }
        } else if (before instanceof ArrayNode first && after instanceof ArrayNode second) {
            compareLists(path, first, second);
        } else {
            compared++;
            if (!same(before, after)) {
                moved.add(new Drift(path, ChangeKind.CHANGED, before, after, difference(before, after)));
            }
        }
    }

    private void compareLists(String path, ArrayNode before, ArrayNode after) {
        boolean byKey = haveKeys(before) && haveKeys(after);
        Map<String, JsonNode> first = elements(before, byKey);
        Map<String, JsonNode> second = elements(after, byKey);
        Set<String> all = new LinkedHashSet<>(first.keySet());
        all.addAll(second.keySet());
        all.forEach(key -> compare(path + "/" + escaped(key), first.get(key), second.get(key)));
    }

    private static Set<String> names(JsonNode before, JsonNode after) {
        Set<String> all = new LinkedHashSet<>(before.propertyNames());
        all.addAll(after.propertyNames());
        return all;
    }

    /** A quantity is one value, not two members. */
    private static boolean isTree(JsonNode node) {
        return node.isObject() && !isQuantity(node);
    }

    private static boolean isQuantity(JsonNode node) {
        return node.size() == 2
                && node.path(VALUE).isNumber()
                && node.path(UNIT).isString();
    }

    private static boolean haveKeys(ArrayNode list) {
        return elements(list, true).size() == list.size();
    }

    private static Map<String, JsonNode> elements(ArrayNode list, boolean byKey) {
        Map<String, JsonNode> elements = new LinkedHashMap<>();
        for (int k = 0; k < list.size(); k++) {
            JsonNode element = list.get(k);
            String key = byKey ? key(element) : Integer.toString(k);
            if (key != null) {
                elements.put(key, element);
            }
        }
        return elements;
    }

    private static @Nullable String key(JsonNode element) {
        return KEYS.stream()
                .map(element::path)
                .filter(JsonNode::isString)
                .map(JsonNode::asString)
                .findFirst()
                .orElse(null);
    }

    private static boolean same(JsonNode before, JsonNode after) {
        if (isQuantity(before) && isQuantity(after)) {
            return before.get(UNIT).equals(after.get(UNIT)) && same(before.get(VALUE), after.get(VALUE));
        }
        return before.isNumber() && after.isNumber()
                ? before.decimalValue().compareTo(after.decimalValue()) == 0
                : before.equals(after);
    }

    private static @Nullable JsonNode difference(JsonNode before, JsonNode after) {
        if (before.isNumber() && after.isNumber()) {
            BigDecimal difference = after.decimalValue().subtract(before.decimalValue());
            return JsonNodeFactory.instance.numberNode(difference.doubleValue());
        }
        if (isQuantity(before) && isQuantity(after) && before.get(UNIT).equals(after.get(UNIT))) {
            ObjectNode quantity = JsonNodeFactory.instance.objectNode();
            quantity.set(VALUE, difference(before.get(VALUE), after.get(VALUE)));
            quantity.set(UNIT, after.get(UNIT));
            return quantity;
        }
        return null;
    }

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }
}
