package io.axiswright.app.problem;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A failure as it is answered (RFC 9457).
 *
 * @param type the kind of failure: a reference, relative to the service, at which it is described
 * @param title what the kind is called
 * @param status the HTTP status
 * @param detail what went wrong this time
 * @param instance the path of the request
 * @param code the kind of failure as a word that never changes
 * @param errors the single faults, with their places
 * @param traceId what to quote when reporting a failure of the service itself
 */
public record Problem(
        String type,
        String title,
        int status,
        String detail,
        String instance,
        String code,
        @Nullable List<ProblemError> errors,
        @Nullable String traceId) {

    /** A failure of one kind. */
    static Problem of(ProblemKind kind, int status, String detail, String instance, List<ProblemError> errors) {
        return new Problem(
                kind.type(),
                kind.title(),
                status,
                detail,
                instance,
                kind.name(),
                errors.isEmpty() ? null : List.copyOf(errors),
                null);
    }

    /** The same failure with its trace. */
    Problem traced(String id) {
        return new Problem(type, title, status, detail, instance, code, errors, id);
    }

    /** The same failure where what a header says to a request of its own stands in the body. */
    public Problem withHeaderAt(String header, String pointer) {
        List<ProblemError> placed = errors == null
                ? null
                : errors.stream()
                        .map(error -> error.withHeaderAt(header, pointer))
                        .toList();
        return new Problem(type, title, status, detail, instance, code, placed, traceId);
    }
}
