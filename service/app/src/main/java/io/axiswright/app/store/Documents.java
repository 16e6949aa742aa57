package io.axiswright.app.store;

import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.WireFormat;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import tools.jackson.databind.JsonNode;

/** Records as the bytes that are stored and served, and back: the wire's own form. */
public final class Documents {

    private Documents() {}

    /** The bytes of a record: UTF-8 JSON, the same for the same record. */
    public static byte[] write(Object value) {
        return WireFormat.mapper().writeValueAsBytes(value);
    }

    /** The record behind stored bytes. */
    public static <T> T read(byte[] document, Class<T> type) {
        return RecordReader.read(document, type);
    }

    /** Stored bytes as a tree, for documents that are not all ours to read. */
    public static JsonNode tree(byte[] document) {
        return WireFormat.mapper().readTree(document);
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
