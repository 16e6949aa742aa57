package io.axiswright.app.sizing;

import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * What an answer says whatever the order of the request: without the order of the lists that follow one of the request, and with each
 * pointer into the request replaced by what stands where it leads.
 */
final class Unordered {

    /** Lists of an answer that follow one of the request. */
    private static final Set<String> FOLLOWING = Set.of(
            "axes",
            "spurs",
            "powerLosses",
            "groups",
            "buses",
            "zones",
            "reliefs",
            "unaidedStops",
            "spareHostPorts",
            "enclosures",
            "routes");

    private final ObjectNode request;
    private final Map<JsonNode, String> contents = new IdentityHashMap<>();

    /** What answers to a request say. */
    Unordered(ObjectNode request) {
        this.request = request;
    }

    /** What an answer says. */
    JsonNode answer(JsonNode answer) {
        return told("", answer);
    }

    private JsonNode told(String name, JsonNode node) {
        return switch (node) {
            case ObjectNode object -> {
                ObjectNode copy = object.objectNode();
                object.forEachEntry((member, value) -> copy.set(member, told(member, value)));
                yield copy;
            }
            case ArrayNode list -> {
                List<JsonNode> elements =
                        list.valueStream().map(element -> told("", element)).collect(Collectors.toList());
                yield list.arrayNode().addAll(FOLLOWING.contains(name) ? sorted(elements) : elements);
            }
            case StringNode text when name.equals("pointer") -> StringNode.valueOf(place(text.stringValue()));
            default -> node;
        };
    }

    /** Where a pointer leads, its indices replaced by what stands there. */
    String place(String pointer) {
        JsonNode here = request;
        var place = new StringBuilder();
        for (String token : pointer.split("/")) {
            if (here instanceof ArrayNode list) {
                here = list.path(Integer.parseInt(token));
                place.append('/')
                        .append(contents.computeIfAbsent(
                                here, element -> content("", element).toString()));
            } else if (!token.isEmpty()) {
                here = here.path(token);
                place.append('/').append(token);
            }
        }
        return place.toString();
    }

    private static JsonNode content(String name, JsonNode node) {
        return switch (node) {
            case ObjectNode object -> {
                ObjectNode copy = object.objectNode();
                object.forEachEntry((member, value) -> copy.set(member, content(member, value)));
                yield copy;
            }
            case ArrayNode list -> {
                List<JsonNode> elements =
                        list.valueStream().map(element -> content("", element)).collect(Collectors.toList());
                yield list.arrayNode().addAll(Reordering.LISTS.contains(name) ? sorted(elements) : elements);
            }
            default -> node;
        };
    }

    private static List<JsonNode> sorted(List<JsonNode> elements) {
        elements.sort(Comparator.comparing(JsonNode::toString));
        return elements;
    }
}
