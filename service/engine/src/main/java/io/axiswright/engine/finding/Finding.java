package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A remark on a result. Its pointer has the form of those of {@link Fault}, a JSON Pointer as a plain string (RFC 6901, section 3), and leads
 * to something that stands in the request: what its sender can change. What stands only in the result, such as a circuit,
 * is named by the subject, and the pointer leads to what it follows from, such as its first axis. Into a catalogue that was
 * sent along it leads to the very item ({@code /inlineCatalogue/driveUnits/3}); where the request names a stored catalogue
 * it leads to that reference ({@code /catalogue}), for nothing else of the catalogue stands in the request.
 *
 * @param code which remark of the catalogue it is
 * @param severity how much it matters
 * @param subject what it is about, by its name: the id of an axis, of a circuit or of an item, or a few words
 * @param text the remark in words, with its values filled in
 * @param pointer JSON Pointer (RFC 6901, section 3) into the request, to what it is about or follows from, always something
 *     that is there; "" for the whole request, "/catalogue" for anything of a stored catalogue
 * @param clause the rule behind it: standard and clause, or "common practice, no source"
 * @param value the offending value, where there is one
 * @param limit the limit it is held against, where there is one
 * @param remedy what would fix it
 */
public record Finding(
        FindingCode code,
        Severity severity,
        String subject,
        String text,
        String pointer,
        String clause,
        @Nullable Quantity value,
        @Nullable Quantity limit,
        String remedy) {

    /** The same remark, leading to another place in the request. */
    public Finding at(String place) {
        return new Finding(code, severity, subject, text, place, clause, value, limit, remedy);
    }
}
