package io.axiswright.app.wire;

import java.io.ByteArrayOutputStream;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes records as JSON: components in their order, nothing for null, quantities with units, money as decimal strings. The
 * same record gives the same bytes, and {@link RecordReader} reads it back.
 */
public final class RecordWriter {

    private static final int AT_FIRST = 32 * 1024;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    .build())
            .build();

    private RecordWriter() {}

    /** The bytes of a record, in UTF-8. */
    public static byte[] write(Object value) {
        return buffer(value).toByteArray();
    }

    /** The same bytes where they were written, for those who only pass them on. */
    static ByteArrayOutputStream buffer(Object value) {
        var bytes = new ByteArrayOutputStream(AT_FIRST);
        try (JsonGenerator json = MAPPER.createGenerator(bytes)) {
            Writings.write(value, json);
        }
        return bytes;
    }
}
