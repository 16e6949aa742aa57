package io.axiswright.app.apispec;

import io.axiswright.probe.SchemaChecker;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The document the service serves, to look things up in. */
final class ApiDocument {

    private static final Set<String> METHODS = Set.of("get", "put", "post", "delete", "patch", "head", "options");

    /** An operation: where it is and what the document says of it. */
    record Operation(String id, String method, String path, JsonNode content) {

        /** Whether it takes a body. */
        boolean takesBody() {
            return content.has("requestBody");
        }

        /** The name of its body's schema; empty if it takes none. */
        String bodySchema() {
            String reference = content.at("/requestBody/content/application~1json/schema/$ref")
                    .asString("");
            return reference.substring(reference.lastIndexOf('/') + 1);
        }
    }

    private final JsonNode root;
    private final SchemaChecker checker;

    ApiDocument(String json) {
        root = JsonMapper.shared().readTree(json);
        checker = new SchemaChecker(root);
    }

    JsonNode root() {
        return root;
    }

    Stream<Operation> operations() {
        return root.get("paths")
                .propertyStream()
                .flatMap(path -> path.getValue()
                        .propertyStream()
                        .filter(member -> METHODS.contains(member.getKey()))
                        .map(member -> new Operation(
                                member.getValue().path("operationId").asString(""),
                                member.getKey().toUpperCase(Locale.ROOT),
                                path.getKey(),
                                member.getValue())));
    }

    Operation operation(String id) {
        return operations()
                .filter(operation -> operation.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no operation " + id));
    }

    /** What a reference leads to, or the node itself. */
    JsonNode resolve(JsonNode node) {
        return node.has("$ref") ? root.at(node.get("$ref").asString().substring(1)) : node;
    }

    /** What is wrong with an answer by the document. */
    List<String> faults(Operation operation, int status, @Nullable String contentType, JsonNode answer) {
        JsonNode response = resolve(operation.content().path("responses").path(Integer.toString(status)));
        if (response.isMissingNode()) {
            return List.of(operation.id() + " has no answer " + status);
        }
        String type = contentType == null ? "" : contentType.replaceFirst(";.*", "");
        JsonNode schema = response.path("content").path(type).path("schema");
        if (schema.isMissingNode()) {
            return List.of(operation.id() + " answers " + status + " not as " + contentType);
        }
        return faults(schema, answer);
    }

    /** What is wrong with JSON by a schema that stands in the document. */
    List<String> faults(JsonNode schema, JsonNode json) {
        String reference = schema.path("$ref").asString("");
        return reference.isEmpty()
                ? List.of("a schema without a name: " + schema)
                : checker.faults(reference.substring(reference.lastIndexOf('/') + 1), json);
    }
}
