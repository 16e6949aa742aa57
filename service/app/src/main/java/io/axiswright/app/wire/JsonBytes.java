package io.axiswright.app.wire;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** JSON in UTF-8 as it grows. */
final class JsonBytes {

    private static final int AT_FIRST = 16 * 1024;
    /** The most bytes a character takes: a control character as its number. */
    private static final int WIDEST = 6;

    /** From here on Java writes numbers with an exponent. */
    private static final double SCIENTIFIC = 1e7;

    private static final byte[] POINT_ZERO = {'.', '0'};
    private static final String HEX = "0123456789ABCDEF";

    private byte[] bytes = new byte[AT_FIRST];
    private int end;

    /** What has been written. */
    byte[] toArray() {
        return Arrays.copyOf(bytes, end);
    }

    /** Something that is JSON already. */
    void raw(byte[] encoded) {
        reserve(encoded.length);
        System.arraycopy(encoded, 0, bytes, end, encoded.length);
        end += encoded.length;
    }

    /** A punctuation mark. */
    void mark(char mark) {
        reserve(1);
        bytes[end++] = (byte) mark;
    }

    /** Takes back a comma that nothing followed, then closes what was open. */
    void close(char mark) {
        if (bytes[end - 1] == ',') {
            end--;
        }
        mark(mark);
    }

    /** A finite binary number in the fewest digits that tell it from its neighbours. */
    void number(double value) {
        int whole = (int) value;
        // most numbers of an answer are whole, and their digits are found faster; not so -0.0
        if (whole == value && whole != 0 && Math.abs(value) < SCIENTIFIC) {
            raw(Integer.toString(whole));
            raw(POINT_ZERO);
        } else {
            raw(Double.toString(value));
        }
    }

    /** Something that is JSON already. */
    void raw(String json) {
        raw(json.getBytes(StandardCharsets.UTF_8));
    }

    /** A member's name with its colon. */
    void name(String name) {
        text(name);
        mark(':');
    }

    /** A string in its quotation marks. */
    void text(String text) {
        int length = text.length();
        reserve(length * WIDEST + 2);
        byte[] target = bytes;
        int at = end;
        target[at++] = '"';
        for (int k = 0; k < length; k++) {
            char c = text.charAt(k);
            if (c < ' ' || c > '~' || c == '"' || c == '\\') {
                end = at;
                special(text, k);
                return;
            }
            target[at++] = (byte) c;
        }
        target[at++] = '"';
        end = at;
    }

    /** The rest of a string from its first character that is not written as it is. */
    private void special(String text, int from) {
        for (int k = from; k < text.length(); k++) {
            char c = text.charAt(k);
            if (c < ' ' || c == '"' || c == '\\') {
                escape(c);
            } else if (c < 0x80) {
                bytes[end++] = (byte) c;
            } else if (Character.isHighSurrogate(c) && k + 1 < text.length()) {
                encode(text.substring(k, k + 2));
                k++;
            } else {
                encode(text.substring(k, k + 1));
            }
        }
        bytes[end++] = '"';
    }

    private void encode(String character) {
        byte[] encoded = character.getBytes(StandardCharsets.UTF_8);
        System.arraycopy(encoded, 0, bytes, end, encoded.length);
        end += encoded.length;
    }

    private void escape(char c) {
        bytes[end++] = '\\';
        int letter = "\"\\\b\f\n\r\t".indexOf(c);
        if (letter >= 0) {
            bytes[end++] = (byte) "\"\\bfnrt".charAt(letter);
            return;
        }
        bytes[end++] = 'u';
        bytes[end++] = '0';
        bytes[end++] = '0';
        bytes[end++] = (byte) HEX.charAt(c >> 4);
        bytes[end++] = (byte) HEX.charAt(c & 0xF);
    }

    private void reserve(int more) {
        if (bytes.length - end < more) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, end + more));
        }
    }
}
