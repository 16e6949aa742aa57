package io.axiswright.app.problem;

import java.util.List;

/** A change without naming the version it starts from (428). */
public final class PreconditionRequired extends Failure {

    private static final long serialVersionUID = 1L;

    /** Asks for If-Match. */
    public PreconditionRequired() {
        super(
                ProblemKind.PRECONDITION_REQUIRED,
                "A change must name the version it starts from.",
                List.of(ProblemError.ofHeader(
                        "If-Match",
                        "MISSING",
                        "There is no If-Match.",
                        "the ETag of the version the change starts from")));
    }
}
