package io.axiswright.app.sizing;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Requests with their lists in another order. */
final class Reordering {

    /** Lists of a design whose order means nothing; so does that of every list of the catalogue itself. */
    static final Set<String> LISTS = Set.of(
            "axes",
            "stopZones",
            "margins",
            "places",
            "ports",
            "fixed",
            "reserved",
            "spurCables",
            "separations",
            "gateways",
            "nodes",
            "edges",
            "attachments",
            "fieldDevices",
            "furtherPlaces",
            "openPlaces",
            "cableRoutes",
            "otherDiameters",
            "enclosures",
            "needs");

    private Reordering() {}

    /** The request with its lists turned about. */
    static ObjectNode reversed(ObjectNode body) {
        return reordered(body, Collections::reverse);
    }

    /** The request with its lists shuffled; the same way for the same seed. */
    static ObjectNode shuffled(ObjectNode body, long seed) {
        var random = new Random(seed);
        return reordered(body, list -> Collections.shuffle(list, random));
    }

    private static ObjectNode reordered(ObjectNode body, Consumer<List<JsonNode>> order) {
        ObjectNode copy = body.deepCopy();
        reorder(copy, order);
        copy.get("inlineCatalogue").values().forEach(list -> reorderList(list, order));
        return copy;
    }

    private static void reorder(JsonNode node, Consumer<List<JsonNode>> order) {
        node.values().forEach(value -> reorder(value, order));
        node.propertyStream()
                .filter(member -> LISTS.contains(member.getKey()))
                .forEach(member -> reorderList(member.getValue(), order));
    }

    private static void reorderList(JsonNode node, Consumer<List<JsonNode>> order) {
        if (node instanceof ArrayNode list) {
            List<JsonNode> elements = list.valueStream().collect(Collectors.toList());
            order.accept(elements);
            list.removeAll().addAll(elements);
        }
    }
}
