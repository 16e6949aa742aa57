package io.axiswright.app.problem;

import io.axiswright.engine.finding.Fault;
import org.jspecify.annotations.Nullable;

/**
 * One fault of a request. It names its place by exactly one of pointer, parameter and header.
 *
 * @param pointer place in the body: a JSON Pointer as a plain string (RFC 6901, section 3), "" for the whole body; a member that is
 *     missing is named where it belongs
 * @param parameter name of the query parameter or path variable
 * @param header name of the header
 * @param code what kind of fault, as a word that never changes
 * @param detail the offending value and what is wrong with it
 * @param accepted what would be accepted there
 */
public record ProblemError(
        @Nullable String pointer,
        @Nullable String parameter,
        @Nullable String header,
        String code,
        String detail,
        @Nullable String accepted) {

    /** A fault in the body. */
    static ProblemError of(Fault fault) {
        return new ProblemError(fault.pointer(), null, null, fault.code().name(), fault.detail(), fault.accepted());
    }

    /** A fault of a query parameter or path variable. */
    public static ProblemError ofParameter(String name, String code, String detail, @Nullable String accepted) {
        return new ProblemError(null, name, null, code, detail, accepted);
    }

    /** A fault of a header. */
    public static ProblemError ofHeader(String name, String code, String detail, @Nullable String accepted) {
        return new ProblemError(null, null, name, code, detail, accepted);
    }

    /** A fault of that header as one of the place in the body that stands for it; any other fault as it is. */
    ProblemError withHeaderAt(String name, String place) {
        return name.equals(header) ? new ProblemError(place, null, null, code, detail, accepted) : this;
    }
}
