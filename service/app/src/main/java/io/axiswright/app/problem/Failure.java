package io.axiswright.app.problem;

import java.util.List;
import org.springframework.http.HttpHeaders;

/** A request that cannot be served, for a reason the caller can do something about. */
public class Failure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final ProblemKind kind;
    private final transient List<ProblemError> errors;
    private final transient HttpHeaders headers = new HttpHeaders();

    /** A failure of one kind; the detail is shown to the caller. */
    public Failure(ProblemKind kind, String detail) {
        this(kind, detail, List.of());
    }

    /** A failure of one kind with its single faults; detail and faults are shown to the caller. */
    public Failure(ProblemKind kind, String detail, List<ProblemError> errors) {
        super(detail);
        this.kind = kind;
        this.errors = List.copyOf(errors);
    }

    /** What kind of failure. */
    public ProblemKind kind() {
        return kind;
    }

    /** The single faults. */
    public List<ProblemError> errors() {
        return errors;
    }

    /** Headers the answer carries beside the problem. */
    public HttpHeaders headers() {
        return headers;
    }
}
