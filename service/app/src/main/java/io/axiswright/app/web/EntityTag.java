package io.axiswright.app.web;

import io.axiswright.app.problem.Failure;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.app.problem.ProblemError;
import io.axiswright.app.problem.ProblemKind;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;

/**
 * A strong entity tag (RFC 9110, 8.8.3).
 *
 * @param value the tag without its quotes
 */
public record EntityTag(String value) {

    private static final Pattern TAG = Pattern.compile("(W/)?\"([!#-~\\x80-\\xff]*)\"");

    /** A list of tags; commas may stand with nothing between them (RFC 9110, 5.6.1). */
    private static final Pattern LIST = Pattern.compile("[ \t,]*+" + TAG + "(?:[ \t]*+,[ \t,]*+" + TAG + ")*+[ \t,]*+");

    private static final String ACCEPTED = "a list of entity tags, each in its double quotes, or *";

    /** The tag that a header of ours carries. */
    static EntityTag ofQuoted(String quoted) {
        return new EntityTag(quoted.substring(1, quoted.length() - 1));
    }

    /** The tag as headers carry it. */
    public String quoted() {
        return '"' + value + '"';
    }

    /**
     * Holds a change against the state it was made for.
     *
     * @param ifMatch the request's If-Match: a list of tags, or {@code *} for whatever the present state is
     * @throws PreconditionRequired if there is none
     * @throws Failure if it is neither
     * @throws PreconditionFailed if this tag, which names the present state, is not among them
     */
    public void requireMatch(@Nullable String ifMatch) {
        if (ifMatch == null) {
            throw new PreconditionRequired();
        }
        if (ifMatch.strip().equals("*")) {
            return;
        }
        if (!LIST.matcher(ifMatch).matches()) {
            String detail = "The value of If-Match is no list of entity tags.";
            var error = ProblemError.ofHeader(HttpHeaders.IF_MATCH, "WRONG_TYPE", detail, ACCEPTED);
            throw new Failure(ProblemKind.INVALID_PARAMETER, detail, List.of(error));
        }
        if (!isAmong(ifMatch)) {
            throw new PreconditionFailed(quoted());
        }
    }

    /** Whether a request holds a representation of this tag, or any: weak comparison, for If-None-Match (RFC 9110, 13.1.2). */
    boolean isHeldBy(List<String> ifNoneMatch) {
        return ifNoneMatch.stream()
                .anyMatch(field -> field.strip().equals("*")
                        || TAG.matcher(field).results().anyMatch(tag -> value.equals(tag.group(2))));
    }

    /** Strong comparison: a weak tag matches nothing. */
    private boolean isAmong(String ifMatch) {
        return TAG.matcher(ifMatch).results().anyMatch(this::matches);
    }

    private boolean matches(MatchResult tag) {
        return tag.group(1) == null && value.equals(tag.group(2));
    }
}
