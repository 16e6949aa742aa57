package io.axiswright.app.wire;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** A body that is not JSON; the place is where reading stopped. */
public final class MalformedJson extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private static final Pattern CHARACTER = Pattern.compile("(character \\(|close marker )'(?<shown>.)'");

    private final int line;
    private final int column;

    /** A body that is not JSON for the given reason, at a line and column counted from 1. */
    public MalformedJson(String reason, int line, int column) {
        super(reason);
        this.line = line;
        this.column = column;
    }

    /** The parser's complaint in our words; its own may name settings and classes. */
    public static MalformedJson of(JacksonException e) {
        var at = e.getLocation();
        return new MalformedJson(reason(e), at == null ? 1 : at.getLineNr(), at == null ? 1 : at.getColumnNr());
    }

    /** Where reading stopped, counted from 1. */
    public int line() {
        return line;
    }

    /** Where in the line reading stopped, counted from 1. */
    public int column() {
        return column;
    }

    /** What is wrong, and where. */
    public String inWords() {
        return "The body is not JSON: " + getMessage() + " (line " + line + ", column " + column + ").";
    }

    private static String reason(JacksonException e) {
        String said = String.valueOf(e.getOriginalMessage());
        Matcher character = CHARACTER.matcher(said);
        return switch (e) {
            case UnexpectedEndOfInputException _ -> "the document ends too early";
            case StreamConstraintsException _ when said.contains("depth") -> JsonDocument.TOO_DEEP;
            case StreamConstraintsException _ -> "a number or name is too long";
            case JacksonException _
            when said.contains("NaN") || said.contains("INF") || said.contains("Infinity") ->
                "NaN and Infinity are not numbers";
            case JacksonException _
            when character.find() -> "the character '" + Excerpt.of(character.group("shown")) + "' cannot stand there";
            case JacksonException _ -> "the text there is no JSON value";
        };
    }
}
