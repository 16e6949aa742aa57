package io.axiswright.app.sizing;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.http.MediaType;

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

    /** The form a caller likes best, by quality (RFC 9110, 12.4.2 and 12.5.1), of two liked alike the one named first; JSON otherwise. */
    static BatchForm of(List<MediaType> accepted) {
        double json = JSON.quality(accepted);
        double lines = LINES.quality(accepted);
        return lines > json || lines == json && LINES.place(accepted) < JSON.place(accepted) ? LINES : JSON;
    }

    /** That of the closest range it is in; 0 if it is in none, unless everything is accepted. */
    private double quality(List<MediaType> accepted) {
        return accepted.isEmpty()
                ? 1
                : closest(accepted).map(MediaType::getQualityValue).orElse(0.0);
    }

    private int place(List<MediaType> accepted) {
        return closest(accepted).map(accepted::indexOf).orElse(accepted.size());
    }

    private Optional<MediaType> closest(List<MediaType> accepted) {
        MediaType form = MediaType.parseMediaType(mediaType);
        return accepted.stream()
                .filter(range -> range.includes(form))
                .min(Comparator.comparing(MediaType::isWildcardType).thenComparing(MediaType::isWildcardSubtype));
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
