package io.axiswright.app.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes JSON by the paths of a comparison, in which elements of lists stand by what names them. */
public final class JsonParts {

    private static final List<String> NAMES = List.of("id", "axis", "circuit", "node", "item", "name", "symbol");

    private JsonParts() {}

    private static List<String> steps(String path) {
        List<String> steps = new ArrayList<>();
        for (String step : path.substring(1).split("/")) {
            steps.add(step.replace("~1", "/").replace("~0", "~"));
        }
        return steps;
    }

    /** What stands at a path; missing if nothing does. */
    public static JsonNode at(JsonNode root, String path) {
        JsonNode value = root;
        for (String step : steps(path)) {
            value = value.isArray() ? element(value, step) : value.path(step);
        }
        return value;
    }

    /** Puts what a change says stood before, or stands after, where it says; nothing where that is absent. */
    public static void put(ObjectNode root, JsonNode change, String side) {
        List<String> steps = steps(change.required("path").asString());
        JsonNode owner = root;
        for (String step : steps.subList(0, steps.size() - 1)) {
            owner = owner.isArray() ? element(owner, step) : owner.path(step);
        }
        String last = steps.getLast();
        JsonNode value = change.path(side);
        if (owner instanceof ArrayNode list) {
            int place = place(list, last);
            if (place < 0) {
                list.add(value);
            } else if (value.isMissingNode()) {
                list.remove(place);
            } else {
                list.set(place, value);
            }
        } else if (value.isMissingNode()) {
            ((ObjectNode) owner).remove(last);
        } else {
            ((ObjectNode) owner).set(last, value);
        }
    }

    private static JsonNode element(JsonNode list, String step) {
        int place = place(list, step);
        return place < 0 ? list.path("none") : list.path(place);
    }

    private static int place(JsonNode list, String step) {
        for (int k = 0; k < list.size(); k++) {
            if (step.equals(name(list.path(k)))) {
                return k;
            }
        }
        boolean unnamed = !list.isEmpty() && name(list.path(0)).isEmpty();
        return unnamed && step.matches("\\d+") && Integer.parseInt(step) < list.size() ? Integer.parseInt(step) : -1;
    }

    private static String name(JsonNode element) {
        if (element.isString()) {
            return element.asString();
        }
        return NAMES.stream()
                .map(element::path)
                .filter(JsonNode::isString)
                .map(JsonNode::asString)
                .findFirst()
                .orElse("");
    }

    /** A copy with the first ids replaced by the second ones. */
    public static JsonNode renamed(JsonNode root, JsonNode renames) {
        String text = root.toString();
        for (JsonNode rename : renames) {
            text = text.replace(
                    rename.required("before").toString(),
                    rename.required("after").toString());
        }
        return JsonMapper.shared().readTree(text);
    }

    /** A copy in which lists of named elements stand in the order of their names, for there the order says nothing. */
    public static JsonNode sorted(JsonNode node) {
        if (node.isArray()) {
            List<JsonNode> elements = new ArrayList<>();
            node.forEach(element -> elements.add(sorted(element)));
            if (elements.stream().noneMatch(element -> name(element).isEmpty())) {
                elements.sort(Comparator.comparing(JsonParts::name));
            }
            return JsonMapper.shared().createArrayNode().addAll(elements);
        }
        if (node.isObject()) {
            ObjectNode copy = JsonMapper.shared().createObjectNode();
            node.properties().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(member -> copy.set(member.getKey(), sorted(member.getValue())));
            return copy;
        }
        return node;
    }

    /** Whether two values are the same but for the rounding of sums. */
    public static boolean alike(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            double larger = Math.max(Math.abs(one.doubleValue()), Math.abs(other.doubleValue()));
            return Math.abs(one.doubleValue() - other.doubleValue()) <= 1e-11 * larger;
        }
        if (one.isContainer() && other.isContainer() && one.getNodeType() == other.getNodeType()) {
            return one.size() == other.size()
                    && (one.isArray()
                            ? IntStream.range(0, one.size()).allMatch(k -> alike(one.path(k), other.path(k)))
                            : one.propertyNames().stream().allMatch(name -> alike(one.path(name), other.path(name))));
        }
        return one.equals(other) || one.isMissingNode() && other.isMissingNode();
    }
}
