package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonArray;
import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonNumber;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.JsonText;
import io.axiswright.app.wire.Json.JsonTruth;
import io.axiswright.app.wire.Json.Member;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.function.Function;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;

/** Turns the bytes of a body into a {@link Json} tree; judges syntax only. */
final class JsonDocument {

    /** How deep objects and arrays may nest. */
    static final int MAX_DEPTH = 64;

    static final String TOO_DEEP = "objects and arrays nest deeper than " + MAX_DEPTH;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(
                    StreamReadConstraints.builder().maxNestingDepth(MAX_DEPTH).build())
            .build();

    private JsonDocument() {}

    /**
     * Parses a whole document.
     *
     * @throws MalformedJson if the bytes are not one JSON value in UTF-8, or nest deeper than {@value #MAX_DEPTH}
     */
    static Json parse(byte[] bytes) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), bytes)) {
            return document(parser, inUtf8(JsonDocument::value));
        } catch (JacksonException e) {
            throw MalformedJson.of(e);
        }
    }

    /**
     * Parses a whole document as it comes.
     *
     * @param root reads its value, up to the last token of it
     * @throws MalformedJson if it is not one JSON value in UTF-8, or nests deeper than {@value #MAX_DEPTH}
     */
    static Json parse(InputStream document, Function<JsonParser, Json> root) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), document)) {
            return document(parser, inUtf8(root));
        } catch (JacksonException e) {
            throw MalformedJson.of(e);
        }
    }

    /**
     * The same tree from one that has already been parsed.
     *
     * @throws MalformedJson if it nests deeper than {@value #MAX_DEPTH}, as what is put together from parts may
     */
    static Json of(JsonNode node) {
        requireDepth(node, MAX_DEPTH);
        try (JsonParser parser = node.traverse(ObjectReadContext.empty())) {
            return document(parser, JsonDocument::value);
        }
    }

    private static void requireDepth(JsonNode node, int deeper) {
        if (node.isContainer() && deeper == 0) {
            throw new MalformedJson(TOO_DEEP, 1, 1);
        }
        node.forEach(inside -> requireDepth(inside, deeper - 1));
    }

    /** Refuses what the parser reads as UTF-16 or UTF-32, of which it does not count the bytes (RFC 8259, 8.1). */
    private static Function<JsonParser, Json> inUtf8(Function<JsonParser, Json> read) {
        return parser -> {
            if (parser.currentTokenLocation().getByteOffset() < 0) {
                throw new MalformedJson("it is not in UTF-8", 1, 1);
            }
            return read.apply(parser);
        };
    }

    private static Json document(JsonParser parser, Function<JsonParser, Json> read) {
        if (parser.nextToken() == null) {
            throw new MalformedJson("the document is empty", 1, 1);
        }
        Json root = read.apply(parser);
        if (parser.nextToken() != null) {
            var at = parser.currentTokenLocation();
            throw new MalformedJson("something follows the end of the document", at.getLineNr(), at.getColumnNr());
        }
        return root;
    }

    /** The value that starts at the present token. */
    static Json value(JsonParser parser) {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> new JsonText(parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonNumber(parser.getString());
            case VALUE_TRUE -> new JsonTruth(true);
            case VALUE_FALSE -> new JsonTruth(false);
            case VALUE_NULL -> new JsonNull();
            case END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                throw new IllegalStateException("no JSON value starts here");
        };
    }

    private static JsonObject object(JsonParser parser) {
        var members = new ArrayList<Member>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            members.add(new Member(name, value(parser)));
        }
        return new JsonObject(members);
    }

    private static JsonArray array(JsonParser parser) {
        var elements = new ArrayList<Json>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(parser));
        }
        return new JsonArray(elements);
    }
}
