package io.axiswright.app.support;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The document the service serves, to look things up in. */
public final class ApiDocument {

    private static final Set<String> METHODS = Set.of("get", "put", "post", "delete", "patch", "head", "options");
    private static final Pattern VARIABLE = Pattern.compile("\\{([^}]+)}");

    /**
     * An operation: where it is and what the document says of it.
     *
     * @param address matches the paths of requests to it, with a group for each variable
     */
    public record Operation(String id, String method, String path, Pattern address, JsonNode content) {

        /** The values of the variables in a request's path, as they are sent; empty if the path is another one. */
        Optional<Map<String, String>> variables(String sent) {
            Matcher values = address.matcher(sent);
            if (!values.matches()) {
                return Optional.empty();
            }
            var named = new HashMap<String, String>();
            Matcher names = VARIABLE.matcher(path);
            for (int k = 1; names.find(); k++) {
                named.put(names.group(1), values.group(k));
            }
            return Optional.of(named);
        }

        /** Whether it takes a body. */
        public boolean takesBody() {
            return content.has("requestBody");
        }

        /** The name of its body's schema; empty if it takes none. */
        public String bodySchema() {
            String reference = content.at("/requestBody/content/application~1json/schema/$ref")
                    .asString("");
            return reference.substring(reference.lastIndexOf('/') + 1);
        }
    }

    private final JsonNode root;
    private final SchemaChecker checker;
    private final List<Operation> operations;

    /** A document as it is served. */
    public ApiDocument(String json) {
        root = JsonMapper.shared().readTree(json);
        checker = new SchemaChecker(root);
        operations = root.get("paths")
                .propertyStream()
                .flatMap(path -> path.getValue()
                        .propertyStream()
                        .filter(member -> METHODS.contains(member.getKey()))
                        .map(member -> new Operation(
                                member.getValue().path("operationId").asString(""),
                                member.getKey().toUpperCase(Locale.ROOT),
                                path.getKey(),
                                address(path.getKey()),
                                member.getValue())))
                .toList();
    }

    private static Pattern address(String path) {
        // what stands between the variables is to be taken as it is
        return Pattern.compile("\\Q" + VARIABLE.matcher(path).replaceAll("\\\\E([^/]+)\\\\Q") + "\\E");
    }

    /** All of it. */
    public JsonNode root() {
        return root;
    }

    /** Its operations, in the order of the document. */
    public Stream<Operation> operations() {
        return operations.stream();
    }

    /** The operation of an id, which must be there. */
    public Operation operation(String id) {
        return operations()
                .filter(operation -> operation.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no operation " + id));
    }

    /** The operation a request is for; empty if the document has none. */
    public Optional<Operation> operation(String method, String path) {
        return operations()
                .filter(operation -> operation.method().equals(method)
                        && operation.variables(path).isPresent())
                .findFirst();
    }

    /** What a reference leads to, or the node itself. */
    public JsonNode resolve(JsonNode node) {
        return node.has("$ref") ? root.at(node.get("$ref").asString().substring(1)) : node;
    }

    /** What the document says of an operation's answer of a status; a missing node if it knows none. */
    public JsonNode answer(Operation operation, int status) {
        return resolve(operation.content().path("responses").path(Integer.toString(status)));
    }

    /** The schema of a media type among those of a body; a missing node if it is not among them. */
    public static JsonNode schema(JsonNode body, @Nullable String contentType) {
        String type = contentType == null ? "" : contentType.replaceFirst(";.*", "");
        return body.path("content").path(type).path("schema");
    }

    /** What is wrong with JSON by a schema that stands in the document. */
    public List<String> faults(JsonNode schema, JsonNode json) {
        return checker.faults(schema, json);
    }
}
