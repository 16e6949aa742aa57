package io.axiswright.engine.finding;

/**
 * One thing wrong with an input document.
 *
 * @param pointer JSON Pointer to the place, from the document's root, as a plain string (RFC 6901, section 3); a member that
 *     is missing is named where it belongs
 * @param code what kind of fault
 * @param detail the offending value and what is wrong with it
 * @param accepted what would be accepted there
 */
public record Fault(String pointer, FaultCode code, String detail, String accepted) {

    /** The same fault at another place. */
    public Fault at(String place) {
        return new Fault(place, code, detail, accepted);
    }
}
