package io.axiswright.app.store;

import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.RecordWriter;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;

/** Records as the bytes that are stored and served, and back: the wire's own form. */
public final class Documents {

    private static final JsonMapper SORTED =
            JsonMapper.builder().enable(JsonNodeFeature.WRITE_PROPERTIES_SORTED).build();

    private Documents() {}

    /** The bytes of a record: UTF-8 JSON, the same for the same record. */
    public static byte[] write(Object value) {
        return RecordWriter.write(value);
    }

    /** The record behind stored bytes. */
    public static <T> T read(byte[] document, Class<T> type) {
        return RecordReader.read(document, type);
    }

    /** Stored bytes as a tree, for documents that are not all ours to read. */
    public static JsonNode tree(byte[] document) {
        return JsonMapper.shared().readTree(document);
    }

    /** The same bytes for records that mean the same, also where trees are in them: without blanks, members in the order of their names. */
    public static byte[] canonical(Object value) {
        return SORTED.writeValueAsBytes(tree(write(value)));
    }

    /** SHA-256 of stored bytes in lower-case hexadecimal digits; their strong entity tag. */
    public static String digest(byte[] document) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(document));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
