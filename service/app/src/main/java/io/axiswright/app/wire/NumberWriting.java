package io.axiswright.app.wire;

import tools.jackson.core.JsonGenerator;

/** Writes binary numbers as {@link Double#toString(double)} words them. */
final class NumberWriting {

    private static final double FROM = 1e-3;
    private static final double BELOW = 1e7;
    private static final int PLACES = 4;
    private static final int POWER = 10_000;
    private static final int MOST_CHARACTERS = 14;

    private NumberWriting() {}

    /**
     * Writes a number. One of at most four decimal places, as most are that somebody chose, needs no search for the shortest
     * decimal that reads back: a decimal of at most 15 digits is that decimal. This takes half the time.
     */
    static void write(double value, JsonGenerator json) {
        double magnitude = Math.abs(value);
        long scaled = Math.round(magnitude * POWER);
        if (magnitude >= FROM && magnitude < BELOW && (double) scaled / POWER == magnitude) {
            decimal(value < 0, scaled, json);
        } else {
            json.writeNumber(value);
        }
    }

    private static void decimal(boolean negative, long scaled, JsonGenerator json) {
        char[] text = new char[MOST_CHARACTERS];
        int first = text.length;
        long rest = scaled;
        int end = first;
        for (int place = 0; place < PLACES; place++, rest /= 10) {
            char digit = (char) ('0' + rest % 10);
            text[--first] = digit;
            if (digit == '0' && end == first + 1 && place < PLACES - 1) {
                end = first; // no zeros at the end but the one after the point
            }
        }
        text[--first] = '.';
        do {
            text[--first] = (char) ('0' + rest % 10);
            rest /= 10;
        } while (rest > 0);
        if (negative) {
            text[--first] = '-';
        }
        json.writeNumber(text, first, end - first);
    }
}
