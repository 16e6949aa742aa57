package io.axiswright.app.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Objects as the bytes that are stored and served, and back. */
@Component
public final class Documents {

    private final JsonMapper mapper;

    Documents(JsonMapper mapper) {
        this.mapper = mapper;
    }

    /** The bytes of an object: UTF-8 JSON. */
    public byte[] write(Object value) {
        return mapper.writeValueAsBytes(value);
    }

    /** The object behind stored bytes. */
    public <T> T read(byte[] document, Class<T> type) {
        return mapper.readValue(document, type);
    }

    /** SHA-256 of stored bytes, in lower-case hexadecimal digits; serves as their strong entity tag. */
    public static String digest(byte[] document) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(document));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
