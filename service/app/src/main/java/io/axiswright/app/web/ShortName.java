package io.axiswright.app.web;

import com.fasterxml.jackson.annotation.JsonValue;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.regex.Pattern;

/**
 * A name that callers give and that stands in addresses, of a branch or a label.
 *
 * @param value 1 to 50 lower-case letters, digits and hyphens, a letter or digit first
 */
@Schema(type = "string", pattern = ShortName.FORM, description = "Lower-case letters, digits and hyphens.")
public record ShortName(@JsonValue String value) {

    /** What such a name looks like, in words. */
    public static final String ACCEPTED = "1 to 50 lower-case letters, digits and hyphens, a letter or digit first";

    static final String FORM = "^[a-z0-9][a-z0-9-]{0,49}$";

    private static final Pattern PATTERN = Pattern.compile(FORM);

    /** Refuses what has another form. */
    public ShortName {
        if (!isOne(value)) {
            throw new IllegalArgumentException("a name has " + ACCEPTED);
        }
    }

    /** Whether a text is such a name. */
    public static boolean isOne(String text) {
        return PATTERN.matcher(text).matches();
    }

    /**
     * Reads a path variable or parameter; called by Spring.
     *
     * @throws IllegalArgumentException if it has another form
     */
    public static ShortName valueOf(String text) {
        return new ShortName(text);
    }

    @Override
    public String toString() {
        return value;
    }
}
