package io.axiswright.app.web;

import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A strong entity tag (RFC 9110, 8.8.3).
 *
 * @param value the tag without its quotes
 */
public record EntityTag(String value) {

    private static final Pattern TAG = Pattern.compile("(W/)?\"([^\"]*)\"");

    /** The tag as headers carry it. */
    public String quoted() {
        return '"' + value + '"';
    }

    /**
     * Holds a change against the state it was made for.
     *
     * @param ifMatch the request's If-Match: a list of tags, or {@code *} for whatever the present state is
     * @throws PreconditionRequired if there is none
     * @throws PreconditionFailed if this tag, which names the present state, is not among them
     */
    public void requireMatch(@Nullable String ifMatch) {
        if (ifMatch == null) {
            throw new PreconditionRequired();
        }
        if (!ifMatch.strip().equals("*") && !isAmong(ifMatch)) {
            throw new PreconditionFailed(quoted());
        }
    }

    /** Strong comparison: a weak tag matches nothing. */
    private boolean isAmong(String ifMatch) {
        return TAG.matcher(ifMatch).results().anyMatch(this::matches);
    }

    private boolean matches(MatchResult tag) {
        return tag.group(1) == null && value.equals(tag.group(2));
    }
}
