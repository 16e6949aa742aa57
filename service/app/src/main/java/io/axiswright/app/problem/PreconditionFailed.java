package io.axiswright.app.problem;

/** The version the caller starts from is not the present one (412). */
public final class PreconditionFailed extends Failure {

    private static final long serialVersionUID = 1L;

    /** The answer carries the present ETag, quotation marks included. */
    public PreconditionFailed(String presentEtag) {
        super(ProblemKind.PRECONDITION_FAILED, "The present version is " + presentEtag + ".");
        headers().setETag(presentEtag);
    }
}
