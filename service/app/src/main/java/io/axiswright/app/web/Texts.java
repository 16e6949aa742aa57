package io.axiswright.app.web;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Checks the free texts of a request, all of them before any is complained about. */
public final class Texts {

    private final List<Fault> faults = new ArrayList<>();

    /** A text that must say something, in at most so many characters. */
    public Texts required(String pointer, String text, int most) {
        if (text.isBlank()) {
            faults.add(new Fault(pointer, FaultCode.WRONG_COUNT, "the text is blank", "1 to " + most + " characters"));
        }
        return optional(pointer, text, most);
    }

    /** A text that may be absent, of at most so many characters. */
    public Texts optional(String pointer, @Nullable String text, int most) {
        if (text == null) {
            return this;
        }
        if (text.length() > most) {
            faults.add(new Fault(
                    pointer,
                    FaultCode.WRONG_COUNT,
                    "the text has " + text.length() + " characters",
                    "at most " + most + " characters"));
        }
        if (text.codePoints().anyMatch(Texts::cannotBeStored)) {
            faults.add(new Fault(
                    pointer,
                    FaultCode.UNKNOWN_VALUE,
                    "the text has a control character or half a character",
                    "printable characters, tabs and line ends"));
        }
        return this;
    }

    /**
     * Ends the check.
     *
     * @throws InvalidDesign with all that was found, if anything was
     */
    public void check() {
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
    }

    private static boolean cannotBeStored(int character) {
        boolean control = Character.isISOControl(character) && "\t\r\n".indexOf(character) < 0;
        return control || Character.getType(character) == Character.SURROGATE;
    }
}
