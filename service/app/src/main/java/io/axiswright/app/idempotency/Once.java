package io.axiswright.app.idempotency;

import io.axiswright.app.store.Documents;
import io.axiswright.app.store.Identifiers;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Lets a request with a key have its effect once. Only success is kept: a request that failed had no effect, and sent again
 * it is judged again.
 */
@Component
public class Once {

    private final KeptRequests requests;
    private final Identifiers identifiers;
    private final HttpServletRequest current;

    /** Works on the request of the calling thread. */
    Once(KeptRequests requests, Identifiers identifiers, HttpServletRequest current) {
        this.requests = requests;
        this.identifiers = identifiers;
        this.current = current;
    }

    /**
     * The answer to the current request: of its effect, or that of the request of the same key before.
     *
     * @param key the request's Idempotency-Key, if it has one
     * @param body what is asked, in a form that is the same for what means the same
     * @param effect what the request does; keeps its answer within its transaction
     */
    public Answer answer(@Nullable IdempotencyKey key, byte[] body, Function<Keeping, Answer> effect) {
        if (key == null) {
            return effect.apply(answer -> answer);
        }
        UUID claim = identifiers.next();
        Optional<Answer> before = requests.claim(key, fingerprint(body), claim);
        return before.orElseGet(() -> first(key, claim, effect));
    }

    private Answer first(IdempotencyKey key, UUID claim, Function<Keeping, Answer> effect) {
        try {
            return effect.apply(answer -> requests.keep(key, claim, answer));
        } catch (RuntimeException e) {
            try {
                requests.release(key, claim);
            } catch (RuntimeException another) {
                // the claim ends by itself
                e.addSuppressed(another);
            }
            throw e;
        }
    }

    /** What makes it this request: where it goes and what it carries, not the state it was made for. */
    private String fingerprint(byte[] body) {
        String where = "%s %s?%s".formatted(current.getMethod(), current.getRequestURI(), current.getQueryString());
        return Documents.digest((where + '\n' + Documents.digest(body)).getBytes(StandardCharsets.UTF_8));
    }
}
