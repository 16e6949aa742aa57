package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonArray;
import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonNumber;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.JsonText;
import io.axiswright.app.wire.Json.JsonTruth;
import java.math.BigDecimal;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** JSON that nothing takes apart, as the library's own tree. */
final class JsonNodes {

    private static final JsonNodeFactory FACTORY = JsonNodeFactory.instance;

    private JsonNodes() {}

    static JsonNode of(Json json) {
        return switch (json) {
            case JsonObject object -> {
                var node = FACTORY.objectNode();
                object.members().forEach(member -> node.set(member.name(), of(member.value())));
                yield node;
            }
            case JsonArray array -> {
                var node = FACTORY.arrayNode();
                array.elements().forEach(element -> node.add(of(element)));
                yield node;
            }
            case JsonText text -> FACTORY.stringNode(text.value());
            case JsonNumber number -> FACTORY.numberNode(new BigDecimal(number.literal()));
            case JsonTruth truth -> FACTORY.booleanNode(truth.value());
            case JsonNull _ -> FACTORY.nullNode();
        };
    }
}
