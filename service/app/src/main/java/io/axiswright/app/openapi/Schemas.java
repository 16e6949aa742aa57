package io.axiswright.app.openapi;

import io.swagger.v3.oas.models.SpecVersion;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Small schemas from which the large ones are built. */
final class Schemas {

    private Schemas() {}

    /** A schema that accepts anything. */
    static Schema<Object> any() {
        var schema = new JsonSchema();
        schema.setSpecVersion(SpecVersion.V31);
        return schema;
    }

    /** A schema of a JSON type. */
    static Schema<Object> ofType(String type) {
        Schema<Object> schema = any();
        schema.setTypes(new LinkedHashSet<>(Set.of(type)));
        return schema;
    }

    /** A reference to a named schema. */
    static Schema<Object> reference(String name) {
        Schema<Object> schema = any();
        schema.set$ref(SchemaNames.REFERENCE + name);
        return schema;
    }

    /** A string of a closed list. */
    static Schema<Object> words(List<String> words) {
        Schema<Object> schema = ofType("string");
        schema.setEnum(List.copyOf(words));
        return schema;
    }
}
