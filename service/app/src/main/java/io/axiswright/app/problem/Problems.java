package io.axiswright.app.problem;

import io.axiswright.app.wire.BodyTooLarge;
import io.axiswright.app.wire.MalformedJson;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.topology.SearchAbandoned;
import java.util.List;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Makes problems of failures, for the answer to a request or for a part of one. */
public final class Problems {

    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    private Problems() {}

    /** What a failure is to the caller; one that is ours is logged with its trace. */
    public static Problem of(Exception e, String method, String path) {
        return switch (e) {
            case InvalidDesign invalid ->
                of(
                        ProblemKind.INVALID_DESIGN,
                        count(invalid),
                        path,
                        invalid.faults().stream().map(ProblemError::of).toList());
            case Failure failure -> of(failure.kind(), String.valueOf(failure.getMessage()), path, failure.errors());
            case SearchAbandoned abandoned ->
                of(ProblemKind.UNAVAILABLE, String.valueOf(abandoned.getMessage()), path, List.of());
            case MalformedJson malformed -> of(ProblemKind.MALFORMED_JSON, malformed.inWords(), path, List.of());
            case BodyTooLarge large ->
                of(ProblemKind.BODY_TOO_LARGE, "A body may have at most " + large.limit() + " bytes.", path, List.of());
            default -> internal(e, method, path);
        };
    }

    private static Problem of(ProblemKind kind, String detail, String path, List<ProblemError> errors) {
        return Problem.of(kind, kind.status(), detail, path, errors);
    }

    private static String count(InvalidDesign e) {
        int count = e.faults().size() + e.omitted();
        if (count == 1) {
            return "The document has one fault.";
        }
        return "The document has " + count + " faults"
                + (e.omitted() == 0
                        ? "."
                        : "; the first " + e.faults().size() + " are listed, " + e.omitted() + " more are not.");
    }

    private static Problem internal(Exception e, String method, String path) {
        String id = UUID.randomUUID().toString();
        LOG.error("{} {} failed, trace {}", method, path, id, e);
        return of(ProblemKind.INTERNAL, "The request failed for a reason of ours.", path, List.of())
                .traced(id);
    }
}
