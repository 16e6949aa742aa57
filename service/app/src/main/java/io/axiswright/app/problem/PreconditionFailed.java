package io.axiswright.app.problem;

/** The caller's If-Match names a state that is no longer the present one. Answered with 412 and the present ETag. */
public final class PreconditionFailed extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String currentTag;

    /** Carries the present entity tag, with its quotes. */
    public PreconditionFailed(String currentTag) {
        super("It has changed since; its present ETag is " + currentTag + ".");
        this.currentTag = currentTag;
    }

    /** The present entity tag, with its quotes. */
    public String currentTag() {
        return currentTag;
    }
}
