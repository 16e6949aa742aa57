package io.axiswright.app.sizing;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * Machines of several demonstration cells that are alike, all in the very same spot, and to be bought from a catalogue that has
 * everything twice at one price: there is hardly a choice that is not one between equals.
 */
final class CellRow {

    /** Members that name parts of a cell. */
    private static final Set<String> NAMES = Set.of("id", "axis", "axes", "stopZone", "place", "busGroup");

    private final ObjectNode cell;

    private CellRow(ObjectNode cell) {
        this.cell = cell;
    }

    /** A request for as many axes. */
    static ObjectNode of(ObjectNode demonstration, int axes) {
        return new CellRow((ObjectNode) demonstration.get("design")).request(demonstration.deepCopy(), axes);
    }

    private ObjectNode request(ObjectNode body, int axes) {
        ObjectNode design = (ObjectNode) body.get("design");
        int cells = Math.ceilDiv(axes, cell.get("axes").size());
        for (String list : List.of(
                "/axes",
                "/stopZones",
                "/network/places",
                "/network/host/ports",
                "/controlPower/fieldDevices",
                "/installation/cableRoutes",
                "/installation/enclosures")) {
            ArrayNode all = (ArrayNode) design.at(list);
            all.removeAll();
            // 11, 8, 5 …: neither in the order of numbers nor in that of texts
            for (int k = 0; k < cells; k++) {
                all.add(named("", cell.at(list), "-" + (11 - 3 * k)));
            }
            flatten(all);
        }
        ((ObjectNode) design.get("controlPower")).put("place", "main-panel-11");
        only(design, axes);
        body.get("inlineCatalogue").values().forEach(CellRow::twice);
        return body;
    }

    private static void flatten(ArrayNode lists) {
        List<JsonNode> elements =
                lists.valueStream().flatMap(JsonNode::valueStream).toList();
        lists.removeAll().addAll(elements);
    }

    private static JsonNode named(String name, JsonNode node, String suffix) {
        if (node.isString()) {
            return NAMES.contains(name) ? StringNode.valueOf(node.stringValue() + suffix) : node;
        }
        if (node instanceof ObjectNode object) {
            ObjectNode copy = object.objectNode();
            object.forEachEntry((member, value) -> copy.set(member, named(member, value, suffix)));
            return copy;
        }
        if (node instanceof ArrayNode list) {
            return list.arrayNode()
                    .addAll(list.valueStream()
                            .map(element -> named(name, element, suffix))
                            .toList());
        }
        return node;
    }

    /** Leaves the first axes, and what refers to no other. */
    private static void only(ObjectNode design, int count) {
        ArrayNode axes = (ArrayNode) design.get("axes");
        while (axes.size() > count) {
            String gone = axes.remove(axes.size() - 1).get("id").stringValue();
            remove((ArrayNode) design.at("/controlPower/fieldDevices"), gone);
            Stream.of("/installation/cableRoutes", "/installation/enclosures")
                    .flatMap(list -> design.at(list).valueStream())
                    .forEach(element -> remove((ArrayNode) element.get("axes"), gone));
        }
    }

    private static void remove(ArrayNode list, String axis) {
        for (int k = list.size() - 1; k >= 0; k--) {
            JsonNode element = list.get(k);
            if ((element.isObject() ? element.get("axis") : element)
                    .stringValue()
                    .equals(axis)) {
                list.remove(k);
            }
        }
    }

    private static void twice(JsonNode items) {
        if (items instanceof ArrayNode list) {
            List<JsonNode> known =
                    list.valueStream().filter(item -> item.has("price")).toList();
            for (JsonNode item : known) {
                ObjectNode twin = (ObjectNode) item.deepCopy();
                list.add(twin.put("id", item.get("id").stringValue() + "-twin"));
            }
        }
    }
}
