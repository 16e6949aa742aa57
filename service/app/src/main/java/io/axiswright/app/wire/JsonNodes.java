package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonArray;
import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonNumber;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.JsonText;
import io.axiswright.app.wire.Json.JsonTruth;
import io.axiswright.app.wire.Json.Member;
import java.math.BigDecimal;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** JSON that nothing takes apart, as the library's own tree; even so an object has each member once. */
final class JsonNodes {

    private static final JsonNodeFactory FACTORY = JsonNodeFactory.instance;

    private final Faults faults;

    JsonNodes(Faults faults) {
        this.faults = faults;
    }

    JsonNode node(Json json, Path path) {
        return switch (json) {
            case JsonObject object -> object(object, path);
            case JsonArray(List<Json> elements) -> {
                var node = FACTORY.arrayNode();
                for (int k = 0; k < elements.size(); k++) {
                    node.add(node(elements.get(k), path.element(k)));
                }
                yield node;
            }
            case JsonText text -> FACTORY.stringNode(text.value());
            case JsonNumber number -> FACTORY.numberNode(new BigDecimal(number.literal()));
            case JsonTruth truth -> FACTORY.booleanNode(truth.value());
            case JsonNull _ -> FACTORY.nullNode();
        };
    }

    private JsonNode object(JsonObject object, Path path) {
        var node = FACTORY.objectNode();
        for (Member member : object.members()) {
            Path at = path.member(member.name());
            if (node.has(member.name())) {
                RecordReading.duplicate(faults, at, member);
            } else {
                node.set(member.name(), node(member.value(), at));
            }
        }
        return node;
    }
}
