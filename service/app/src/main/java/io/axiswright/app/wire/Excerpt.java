package io.axiswright.app.wire;

/** A caller's text as a message shows it: short, on one line, without anything a terminal would obey. */
final class Excerpt {

    private static final int LENGTH = 60;

    private Excerpt() {}

    /** The text, shortened and cleaned. */
    static String of(String text) {
        int end = text.length();
        if (end > LENGTH) {
            end = Character.isHighSurrogate(text.charAt(LENGTH - 1)) ? LENGTH - 1 : LENGTH;
        }
        var shown = new StringBuilder(end + 1);
        text.substring(0, end).codePoints().forEach(c -> shown.appendCodePoint(isPrintable(c) ? c : '�'));
        return end < text.length() ? shown.append('…').toString() : shown.toString();
    }

    /** The text in quotation marks, shortened and cleaned. */
    static String quoted(String text) {
        return '"' + of(text) + '"';
    }

    /** Whether every code point may stand in a text. */
    static boolean isPrintable(String text) {
        for (int k = 0, c; k < text.length(); k += Character.charCount(c)) {
            c = text.codePointAt(k);
            if (!isPrintable(c)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a code point may stand in a text: no control character and no half of a pair. */
    static boolean isPrintable(int codePoint) {
        int type = Character.getType(codePoint);
        return type != Character.CONTROL && type != Character.SURROGATE;
    }
}
