package io.axiswright.app.problem;

import java.time.Duration;
import org.springframework.http.HttpHeaders;

/** The service cannot take the request just now (503). */
public final class Unavailable extends Failure {

    private static final long serialVersionUID = 1L;

    /** The detail says why; the answer asks to wait. */
    public Unavailable(String detail, Duration retryAfter) {
        super(ProblemKind.UNAVAILABLE, detail);
        headers().set(HttpHeaders.RETRY_AFTER, Long.toString(Math.max(1, retryAfter.toSeconds())));
    }
}
