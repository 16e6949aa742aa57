package io.axiswright.app.support;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Holds JSON against schemas of an API document, with a general-purpose validator; many threads may ask. */
public final class SchemaChecker {

    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final JsonNode document;
    private final Map<JsonNode, Schema> schemas = new ConcurrentHashMap<>();

    /** A checker for the schemas of a document. */
    public SchemaChecker(JsonNode document) {
        this.document = document;
    }

    /** What is wrong with JSON by the schema of that name. */
    public List<String> faults(String schema, JsonNode json) {
        return faults(JsonMapper.shared().createObjectNode().put("$ref", "#/components/schemas/" + schema), json);
    }

    /** What is wrong with JSON by a schema that stands somewhere in the document. */
    public List<String> faults(JsonNode schema, JsonNode json) {
        return schemas.computeIfAbsent(schema, this::compiled).validate(json).stream()
                .map(Object::toString)
                .toList();
    }

    private Schema compiled(JsonNode schema) {
        ObjectNode root = ((ObjectNode) schema).deepCopy();
        root.set("components", document.get("components"));
        return registry.getSchema(root);
    }
}
