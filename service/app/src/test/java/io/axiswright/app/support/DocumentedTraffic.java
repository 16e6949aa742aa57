package io.axiswright.app.support;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.ApiDocument.Operation;
import io.restassured.builder.ResponseBuilder;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * Holds whatever a test sends and gets against the API document: the answer's status, media type, headers and body; of a
 * request that succeeded its media type, parameters and body too, for what the document does not allow the service must refuse.
 */
final class DocumentedTraffic implements Filter {

    private static final Pattern API = Pattern.compile("/(v1|problems)(/.*)?");

    private final ApiDocument document;
    private final boolean requests;

    /**
     * A filter for the traffic of a document's service.
     *
     * @param requests whether to look at requests too
     */
    DocumentedTraffic(ApiDocument document, boolean requests) {
        this.document = document;
        this.requests = requests;
    }

    @Override
    public Response filter(
            FilterableRequestSpecification request, FilterableResponseSpecification expected, FilterContext context) {
        Response response = context.next(request, expected);
        byte[] body = response.asByteArray();
        // a colon need not be encoded in a path, but may be
        URI address = URI.create(request.getURI().replace("%3A", ":"));
        assertThat(faults(request, address, response, body))
                .as(
                        "%s %s answered %d, by the API document",
                        request.getMethod(), address.getRawPath(), response.statusCode())
                .isEmpty();
        // a body is read but once
        return new ResponseBuilder().clone(response).setBody(body).build();
    }

    private List<String> faults(FilterableRequestSpecification request, URI address, Response response, byte[] body) {
        if (!API.matcher(address.getRawPath()).matches()) {
            return List.of();
        }
        var operation = document.operation(request.getMethod(), address.getRawPath());
        if (operation.isEmpty()) {
            boolean refused = response.statusCode() == 404 || response.statusCode() == 405;
            return refused ? List.of() : List.of("no such operation");
        }
        var faults = new ArrayList<>(answerFaults(operation.get(), response, body));
        if (requests && response.statusCode() < 400) {
            faults.addAll(parameterFaults(operation.get(), request, address));
            faults.addAll(bodyFaults(operation.get(), request));
        }
        return faults;
    }

    private List<String> answerFaults(Operation operation, Response response, byte[] body) {
        JsonNode answer = document.answer(operation, response.statusCode());
        if (answer.isMissingNode()) {
            return List.of("no answer of this status");
        }
        List<String> faults = new ArrayList<>();
        for (Map.Entry<String, JsonNode> header : answer.path("headers").properties()) {
            JsonNode described = document.resolve(header.getValue());
            String value = response.header(header.getKey());
            if (value != null) {
                faults.addAll(valueFaults(described, header.getKey(), value));
            } else if (described.path("required").asBoolean()) {
                faults.add("without " + header.getKey());
            }
        }
        if (!answer.has("content")) {
            if (body.length > 0) {
                faults.add("a body where there is none");
            }
            return faults;
        }
        JsonNode schema = ApiDocument.schema(answer, response.contentType());
        if (schema.isMissingNode()) {
            faults.add("not as " + response.contentType());
        } else if (response.contentType().contains("json")) {
            documents(response.contentType(), new String(body, StandardCharsets.UTF_8))
                    .forEach(json -> faults.addAll(document.faults(schema, json)));
        }
        return faults;
    }

    /** A body's document, or one for each of its lines. */
    private static List<JsonNode> documents(String contentType, String body) {
        return contentType.contains("ndjson")
                ? body.lines().map(JsonMapper.shared()::readTree).toList()
                : List.of(JsonMapper.shared().readTree(body));
    }

    private List<String> bodyFaults(Operation operation, FilterableRequestSpecification request) {
        Object body = request.getBody();
        if (body == null) {
            return operation.content().at("/requestBody/required").asBoolean()
                    ? List.of("accepted without a body")
                    : List.of();
        }
        JsonNode schema = ApiDocument.schema(operation.content().path("requestBody"), request.getContentType());
        if (schema.isMissingNode()) {
            return List.of("accepted as " + request.getContentType());
        }
        String text = body instanceof byte[] bytes ? new String(bytes, StandardCharsets.UTF_8) : body.toString();
        JsonNode json = JsonMapper.shared().readTree(text);
        leaveOutNulls(json);
        return document.faults(schema, json).stream()
                .map(fault -> "accepted with " + fault)
                .toList();
    }

    /** A member that is null counts as left out, as the head of the document says. */
    private static void leaveOutNulls(JsonNode json) {
        if (json instanceof ObjectNode object) {
            object.removeIf(JsonNode::isNull);
        }
        json.forEach(DocumentedTraffic::leaveOutNulls);
    }

    private List<String> parameterFaults(Operation operation, FilterableRequestSpecification request, URI address) {
        Map<String, String> query = query(address);
        Map<String, String> path = operation.variables(address.getRawPath()).orElseThrow();
        List<String> faults = new ArrayList<>();
        for (JsonNode parameter : operation.content().path("parameters")) {
            JsonNode described = document.resolve(parameter);
            String name = described.get("name").asString();
            @Nullable
            String value = switch (described.get("in").asString()) {
                case "path" -> decoded(path.getOrDefault(name, ""));
                case "query" -> query.remove(name);
                default -> request.getHeaders().getValue(name);
            };
            if (value != null) {
                faults.addAll(valueFaults(described, name, value));
            } else if (described.path("required").asBoolean()) {
                faults.add("accepted without " + name);
            }
        }
        query.keySet().forEach(unknown -> faults.add("accepted with the unknown parameter " + unknown));
        return faults;
    }

    private List<String> valueFaults(JsonNode described, String name, String value) {
        JsonNode schema = document.resolve(described.get("schema"));
        return document.faults(schema, value(schema, value)).stream()
                .map(fault -> name + ": " + fault)
                .toList();
    }

    /** A value as JSON would have it: text stays text, all else is read. */
    private static JsonNode value(JsonNode schema, String text) {
        try {
            return schema.path("type").asString("").equals("string")
                    ? StringNode.valueOf(text)
                    : JsonMapper.shared().readTree(text);
        } catch (JacksonException noJson) {
            return StringNode.valueOf(text);
        }
    }

    private static Map<String, String> query(URI address) {
        var values = new TreeMap<String, String>();
        if (address.getRawQuery() != null) {
            for (String pair : address.getRawQuery().split("&", -1)) {
                int equals = pair.indexOf('=');
                values.put(
                        decoded(equals < 0 ? pair : pair.substring(0, equals)),
                        equals < 0 ? "" : decoded(pair.substring(equals + 1)));
            }
        }
        return values;
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
