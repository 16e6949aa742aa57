package io.axiswright.app.sizing;

import java.nio.charset.StandardCharsets;

/** How the answers to a batch stand one after the other. */
enum BatchForm {
    /** One JSON document, a {@link BatchResult}. */
    JSON("application/json", "{\"items\":[", ",", "]}"),
    /** A JSON document a line, each a {@link BatchItem}. */
    LINES("application/x-ndjson", "", "\n", "\n");

    private final String mediaType;
    private final byte[] start;
    private final byte[] between;
    private final byte[] end;

    BatchForm(String mediaType, String start, String between, String end) {
        this.mediaType = mediaType;
        this.start = start.getBytes(StandardCharsets.US_ASCII);
        this.between = between.getBytes(StandardCharsets.US_ASCII);
        this.end = end.getBytes(StandardCharsets.US_ASCII);
    }

    String mediaType() {
        return mediaType;
    }

    byte[] start() {
        return start;
    }

    byte[] between() {
        return between;
    }

    byte[] end() {
        return end;
    }
}
