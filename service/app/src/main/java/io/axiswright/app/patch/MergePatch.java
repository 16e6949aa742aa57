package io.axiswright.app.patch;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON Merge Patch (RFC 7396): members given replace, null removes, lists are replaced as a whole. */
public final class MergePatch {

    /** Its media type. */
    public static final String MEDIA_TYPE = "application/merge-patch+json";

    private MergePatch() {}

    /** The document with the patch applied (RFC 7396, section 2); the target itself stays as it is. */
    public static JsonNode apply(JsonNode target, JsonNode patch) {
        if (!(patch instanceof ObjectNode changes)) {
            return patch;
        }
        ObjectNode result =
                target instanceof ObjectNode object ? object.deepCopy() : JsonNodeFactory.instance.objectNode();
        changes.properties().forEach(change -> {
            String name = change.getKey();
            if (change.getValue().isNull()) {
                result.remove(name);
            } else {
                result.set(name, apply(result.path(name), change.getValue()));
            }
        });
        return result;
    }
}
