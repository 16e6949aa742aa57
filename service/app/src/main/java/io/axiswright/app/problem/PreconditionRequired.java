package io.axiswright.app.problem;

/** The request changes something and must say which state it builds on, by If-Match. Answered with 428. */
public final class PreconditionRequired extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Says which ETag to send. */
    public PreconditionRequired(String message) {
        super(message);
    }
}
