package io.axiswright.app.report;

/** Text that may stand in XML. */
final class XmlText {

    private static final int REPLACEMENT = 0xFFFD;

    private XmlText() {}

    /** The text with every character that XML 1.0 (section 2.2) does not know replaced by U+FFFD. */
    static String legal(String text) {
        return text.codePoints().allMatch(XmlText::isLegal)
                ? text
                : text.codePoints()
                        .map(c -> isLegal(c) ? c : REPLACEMENT)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
    }

    private static boolean isLegal(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
