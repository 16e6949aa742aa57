package io.axiswright.app.problem;

/** The request cannot be met in the present state, though it may later. Answered with 409. */
public final class Conflict extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Says what stands in the way and what to do. */
    public Conflict(String message, Throwable cause) {
        super(message, cause);
    }
}
