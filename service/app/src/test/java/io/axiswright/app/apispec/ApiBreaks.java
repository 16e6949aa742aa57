package io.axiswright.app.apispec;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** What a later API document breaks for callers of an earlier one: each break in words, with its place. */
final class ApiBreaks {

    private static final Set<String> METHODS = Set.of("get", "put", "post", "delete", "patch", "head", "options");

    private final JsonNode before;
    private final JsonNode after;
    private final SchemaBreaks schemas;
    private final List<String> found = new ArrayList<>();

    private ApiBreaks(JsonNode before, JsonNode after) {
        this.before = before;
        this.after = after;
        this.schemas = new SchemaBreaks(before, after);
    }

    /** All breaks; none if every caller of the earlier document is served as before. */
    static List<String> between(JsonNode before, JsonNode after) {
        var breaks = new ApiBreaks(before, after);
        breaks.operations();
        breaks.found.addAll(breaks.schemas.found());
        return breaks.found;
    }

    private static JsonNode resolve(JsonNode root, JsonNode node) {
        return node.has("$ref") ? root.at(node.get("$ref").asString().substring(1)) : node;
    }

    private void operations() {
        before.path("paths")
                .forEachEntry((path, methods) -> methods.forEachEntry((method, earlier) -> {
                    if (METHODS.contains(method)) {
                        String place = method.toUpperCase(Locale.ROOT) + " " + path;
                        JsonNode later = after.path("paths").path(path).path(method);
                        if (later.isMissingNode()) {
                            found.add(place + ": operation removed");
                        } else {
                            operation(place, earlier, later);
                        }
                    }
                }));
    }

    private void operation(String place, JsonNode earlier, JsonNode later) {
        // generated clients call it by this name
        if (!earlier.path("operationId").equals(later.path("operationId"))) {
            found.add(place + ": operationId became " + later.path("operationId"));
        }
        parameters(place, earlier, later);
        JsonNode body = resolve(before, earlier.path("requestBody"));
        JsonNode laterBody = resolve(after, later.path("requestBody"));
        if (laterBody.path("required").asBoolean(false)
                && !body.path("required").asBoolean(false)) {
            found.add(place + ": a body must be sent now");
        }
        content(place + " body", SchemaBreaks.Way.REQUEST, body, laterBody);
        earlier.path("responses").forEachEntry((status, answer) -> {
            JsonNode laterAnswer = later.path("responses").path(status);
            if (laterAnswer.isMissingNode()) {
                found.add(place + ": status " + status + " removed");
            } else {
                answer(place + " " + status, resolve(before, answer), resolve(after, laterAnswer));
            }
        });
    }

    private void answer(String place, JsonNode earlier, JsonNode later) {
        earlier.path("headers").forEachEntry((name, header) -> {
            if (!later.path("headers").has(name)) {
                found.add(place + ": header " + name + " removed");
                return;
            }
            JsonNode old = resolve(before, header);
            JsonNode now = resolve(after, later.path("headers").path(name));
            if (old.path("required").asBoolean(false) && !now.path("required").asBoolean(false)) {
                found.add(place + ": header " + name + " need not be there any more");
            }
            schemas.compare(place + " " + name, SchemaBreaks.Way.ANSWER, old.path("schema"), now.path("schema"));
        });
        content(place, SchemaBreaks.Way.ANSWER, earlier, later);
    }

    private void content(String place, SchemaBreaks.Way way, JsonNode earlier, JsonNode later) {
        earlier.path("content").forEachEntry((type, media) -> {
            JsonNode laterMedia = later.path("content").path(type);
            if (laterMedia.isMissingNode()) {
                found.add(place + ": media type " + type + " removed");
            } else {
                schemas.compare(place, way, media.path("schema"), laterMedia.path("schema"));
            }
        });
    }

    private void parameters(String place, JsonNode earlier, JsonNode later) {
        Map<String, JsonNode> old = parameters(before, earlier);
        Map<String, JsonNode> now = parameters(after, later);
        old.forEach((name, parameter) -> {
            JsonNode still = now.get(name);
            if (still == null) {
                found.add(place + ": parameter " + name + " removed");
            } else {
                schemas.compare(
                        place + " " + name, SchemaBreaks.Way.REQUEST, parameter.path("schema"), still.path("schema"));
            }
        });
        now.forEach((name, parameter) -> {
            JsonNode known = old.get(name);
            boolean was = known != null && known.path("required").asBoolean(false);
            if (parameter.path("required").asBoolean(false) && !was) {
                found.add(place + ": parameter " + name + " must be sent now");
            }
        });
    }

    private static Map<String, JsonNode> parameters(JsonNode root, JsonNode operation) {
        Map<String, JsonNode> parameters = new LinkedHashMap<>();
        operation
                .path("parameters")
                .valueStream()
                .map(parameter -> resolve(root, parameter))
                .forEach(parameter -> parameters.put(
                        parameter.path("in").asString() + " "
                                + parameter.path("name").asString(),
                        parameter));
        return parameters;
    }
}
