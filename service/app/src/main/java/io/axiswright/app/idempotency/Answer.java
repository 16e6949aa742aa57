package io.axiswright.app.idempotency;

import io.axiswright.app.store.Documents;
import java.net.URI;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/**
 * The answer to a request that made something, as it is sent and kept.
 *
 * @param status its status
 * @param location where what was made is
 * @param etag entity tag of what was made, with its quotes
 * @param body what is told about it, as JSON
 */
public record Answer(int status, URI location, String etag, byte[] body) {

    /** The answer to a request that made something new. */
    public static Answer created(URI location, String etag, Object body) {
        return new Answer(HttpStatus.CREATED.value(), location, etag, Documents.write(body));
    }

    /** It as an answer over HTTP. */
    public ResponseEntity<byte[]> entity() {
        return ResponseEntity.status(status)
                .location(location)
                .eTag(etag)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body);
    }
}
