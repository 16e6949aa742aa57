package io.axiswright.app.idempotency;

/** Keeps the answer to a request for when it is sent again. */
@FunctionalInterface
public interface Keeping {

    /**
     * The answer, kept if the request has a key. To be called in the transaction of the effect it tells of, so that both
     * hold or neither.
     */
    Answer keep(Answer answer);
}
