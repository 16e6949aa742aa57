package io.axiswright.app.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;

/** How the answers to a batch stand one after the other. */
public enum BatchForm {
    /** One JSON document, whose member {@code items} has them all. */
    JSON(BatchForm.JSON_TYPE, "{\"items\":[", ",", "]}"),
    /** A JSON document a line, each an answer. */
    LINES(BatchForm.LINES_TYPE, "", "\n", "\n");

    /** Media type of a batch as one document. */
    public static final String JSON_TYPE = "application/json";

    /** Media type of a batch by lines. */
    public static final String LINES_TYPE = "application/x-ndjson";

    private static final Logger LOG = LoggerFactory.getLogger(BatchForm.class);

    /** Answers each item of a batch. */
    @FunctionalInterface
    public interface Items {

        /**
         * The answer to an item, a JSON document; asked for in the order of the items, once each.
         *
         * @throws InterruptedException if the service is ending
         */
        byte[] answer(int index) throws InterruptedException;
    }

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
    public static BatchForm of(HttpServletRequest request) {
        var accepted = MediaType.parseMediaTypes(Collections.list(request.getHeaders(HttpHeaders.ACCEPT)));
        double json = JSON.quality(accepted);
        double lines = LINES.quality(accepted);
        return lines > json || lines == json && LINES.place(accepted) < JSON.place(accepted) ? LINES : JSON;
    }

    /**
     * Answers with the items of a batch, each sent as soon as it is known. If the caller goes, the items that are left are not
     * asked for.
     *
     * @throws InterruptedException if the service is ending
     */
    public void answer(HttpServletResponse response, int count, Items items) throws InterruptedException {
        response.setContentType(mediaType);
        try {
            OutputStream out = response.getOutputStream();
            out.write(start);
            for (int index = 0; index < count; index++) {
                out.write(items.answer(index));
                out.write(index + 1 < count ? between : end);
                out.flush();
            }
        } catch (IOException e) {
            LOG.debug("the caller of a batch has gone", e);
        }
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
}
