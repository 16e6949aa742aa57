package io.axiswright.app.idempotency;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.regex.Pattern;

/**
 * The caller's name for one request: a string in the form of structured fields (draft-ietf-httpapi-idempotency-key-header-07,
 * section 2.1; RFC 9651, 3.3.3). Without its quotes it means the same, because many callers leave them out.
 *
 * @param value the key, 1 to 200 printable ASCII characters if it comes from a caller
 */
@Schema(type = "string")
public record IdempotencyKey(String value) {

    /** Its header. */
    public static final String HEADER = "Idempotency-Key";

    private static final Pattern QUOTED = Pattern.compile("\"((?:[ !#-\\[\\]-~]|\\\\[\"\\\\])*)\"");
    private static final Pattern BARE = Pattern.compile("[!#-~][!-~]*");
    private static final int LONGEST = 200;

    /**
     * Reads the header; called by Spring.
     *
     * @throws IllegalArgumentException if it is no key
     */
    public static IdempotencyKey valueOf(String text) {
        var quoted = QUOTED.matcher(text);
        if (quoted.matches()) {
            return ofText(quoted.group(1).replaceAll("\\\\(.)", "$1"));
        }
        if (BARE.matcher(text).matches()) {
            return ofText(text);
        }
        throw new IllegalArgumentException("not a string of structured fields");
    }

    private static IdempotencyKey ofText(String text) {
        if (text.isEmpty() || text.length() > LONGEST) {
            throw new IllegalArgumentException("a key has 1 to " + LONGEST + " characters, not " + text.length());
        }
        return new IdempotencyKey(text);
    }

    /** The key of a part of the request, by its place; no caller can name it, because no key has a line break. */
    public IdempotencyKey part(int index) {
        return new IdempotencyKey(value + '\n' + index);
    }
}
