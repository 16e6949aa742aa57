package io.axiswright.app.problem;

/** There is no such resource, or the caller may not know of it (404). */
public final class NotFound extends Failure {

    private static final long serialVersionUID = 1L;

    /** Nothing of that sort is there: "project", "4711". */
    public NotFound(String sort, Object id) {
        super(ProblemKind.NOT_FOUND, "There is no " + sort + " " + id + ".");
    }
}
