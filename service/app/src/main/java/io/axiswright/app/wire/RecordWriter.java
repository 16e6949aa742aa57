package io.axiswright.app.wire;

/**
 * Writes records as JSON: components in their order, nothing for null, quantities with units, money as decimal strings. The
 * same record gives the same bytes, and {@link RecordReader} reads it back.
 */
public final class RecordWriter {

    private RecordWriter() {}

    /** The bytes of a record, in UTF-8. */
    public static byte[] write(Object value) {
        var json = new JsonBytes();
        Writings.write(value, json);
        return json.toArray();
    }
}
