package io.axiswright.app.web;

import io.swagger.v3.oas.annotations.media.Schema;

/**
 * Most elements of a page.
 *
 * @param value 1 … 100
 */
@Schema(type = "integer", minimum = "1", maximum = "100", description = "Most elements of a page.")
public record Limit(int value) {

    /** What applies if the caller sends none. */
    public static final String DEFAULT = "20";

    private static final int MOST = 100;

    /** Refuses values outside 1 … 100. */
    public Limit {
        if (value < 1 || value > MOST) {
            throw new IllegalArgumentException("a page has 1 to " + MOST + " elements, not " + value);
        }
    }

    /**
     * Reads a request parameter; called by Spring.
     *
     * @throws IllegalArgumentException if it is not a number from 1 to 100
     */
    public static Limit valueOf(String text) {
        return new Limit(Integer.parseInt(text));
    }

    /** How many rows to read so that one too many tells of a next page. */
    public org.springframework.data.domain.Limit plusOne() {
        return org.springframework.data.domain.Limit.of(value + 1);
    }
}
