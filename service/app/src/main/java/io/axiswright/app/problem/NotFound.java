package io.axiswright.app.problem;

/** There is no such thing; the message names it in the caller's words. Answered with 404. */
public final class NotFound extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Names what is not there. */
    public NotFound(String message) {
        super(message);
    }
}
