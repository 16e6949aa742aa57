package io.axiswright.app.wire;

import java.util.Objects;
import tools.jackson.databind.JsonNode;

/**
 * Reads a record from JSON, strictly: every member known, every required one there, every number with a unit that fits and
 * in its range. Finds all faults of a document, not only the first.
 */
public final class RecordReader {

    private RecordReader() {}

    /**
     * Reads a document.
     *
     * @throws MalformedJson if the bytes are not JSON
     * @throws io.axiswright.engine.finding.InvalidDesign if the document cannot be given a meaning; with all its faults
     */
    public static <T> T read(byte[] json, Class<T> type) {
        return read(JsonDocument.parse(json), type);
    }

    /**
     * Reads a document that has already been parsed.
     *
     * @throws io.axiswright.engine.finding.InvalidDesign if the document cannot be given a meaning; with all its faults
     */
    public static <T> T read(JsonNode json, Class<T> type) {
        return read(JsonDocument.of(json), type);
    }

    static <T> T read(Json json, Class<T> type) {
        var faults = new Faults();
        Object value = new Reading(faults).value(json, Shapes.of(type), Path.ROOT);
        faults.throwIfAny();
        return type.cast(Objects.requireNonNull(value));
    }
}
