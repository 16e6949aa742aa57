package io.axiswright.app.problem;

/** The present state forbids the request (409). */
public final class Conflict extends Failure {

    private static final long serialVersionUID = 1L;

    /** The detail says what stands against the request. */
    public Conflict(String detail) {
        super(ProblemKind.CONFLICT, detail);
    }
}
