package io.axiswright.probe;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Holds JSON against a schema of an API document, with a general-purpose validator. */
public final class SchemaChecker {

    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final JsonNode document;
    private final Map<String, Schema> schemas = new HashMap<>();

    /** A checker for the schemas of a document. */
    public SchemaChecker(JsonNode document) {
        this.document = document;
    }

    /** What is wrong with a document by the schema of that name. */
    public List<String> faults(String schema, JsonNode json) {
        return schemas.computeIfAbsent(schema, this::schema).validate(json).stream()
                .map(Object::toString)
                .toList();
    }

    private Schema schema(String name) {
        var root = JsonMapper.shared().createObjectNode();
        root.put("$ref", "#/components/schemas/" + name);
        root.set("components", document.get("components"));
        return registry.getSchema(root);
    }
}
