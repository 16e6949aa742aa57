package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The catalogue of findings. A template's {subject}, {value} and {limit} are filled by {@link #at}; a code, once released,
 * never changes its meaning.
 */
public enum FindingCode {
    // duty
    DUTY_NO_DRIVE_UNIT(
            Severity.VIOLATION,
            "No drive unit of the catalogue holds the duty of axis {subject}; the nearest miss reaches {value} of the limit {limit}.",
            "Add a larger drive unit or a gear to the catalogue, allow forced ventilation, or lengthen the moves."),

    // topology
    TOPOLOGY_NO_LAYOUT(
            Severity.VIOLATION,
            "No layout of the network exists for {subject}: {value} against at most {limit}.",
            "Add gateway places, host ports or longer cables to what may be used."),

    // controlpower
    CONTROL_VOLTAGE_LOW(
            Severity.VIOLATION,
            "The control supply reaches {subject} with {value}, below the {limit} it needs.",
            "Use a larger conductor, a second control supply, or a feed point nearer to the load."),

    // braking
    BRAKING_BUS_OVERVOLTAGE(
            Severity.VIOLATION,
            "The DC bus of {subject} rises to {value}; its drives trip at {limit}.",
            "Add a braking unit, lengthen the deceleration, or join a DC bus with motoring axes."),

    // supply
    SUPPLY_FAULT_RATING_LOW(
            Severity.VIOLATION,
            "{subject} is rated for a fault current of {limit}, but {value} is available there.",
            "Use a device or drive with a higher short-circuit rating, or limit the fault current upstream."),

    // conductor
    CONDUCTOR_NONE_FITS(
            Severity.VIOLATION,
            "No conductor size of the table serves circuit {subject}: {value} against {limit}.",
            "Split the circuit, shorten it, or improve the installation conditions."),
    CONDUCTOR_TABLE_EXCEEDED(
            Severity.VIOLATION,
            "The code's tables end before the conditions of circuit {subject}: {value} against at most {limit}.",
            "Lower the ambient temperature, group fewer circuits, or split the load."),
    CONDUCTOR_DEVICE_TOO_SMALL(
            Severity.VIOLATION,
            "The protective device of circuit {subject} is rated {value}; its load asks for at least {limit}.",
            "Use a larger protective device, or leave the rating out to have it chosen."),
    CONDUCTOR_DEVICE_TOO_LARGE(
            Severity.VIOLATION,
            "The protective device of circuit {subject} is rated {value}; its motor or drive allows at most {limit}.",
            "Use a smaller protective device, or leave the rating out to have it chosen."),
    CONDUCTOR_DEVICE_BY_MOTOR_RULE(
            Severity.CAUTION,
            "{value} of {limit} protective devices, the first on circuit {subject}, follow the general rule for motors.",
            "Hold them against the drives' instructions: the device and the highest rating named there come first."),
    CONDUCTOR_FAULT_UNCHECKED(
            Severity.NOTE,
            "Fault withstand is not checked on {value} of {limit} circuits, the first of them {subject}.",
            "State prospective fault current and clearing time of these circuits."),
    CONDUCTOR_TABLE_FROM_MEMORY(
            Severity.CAUTION,
            "{value} of the {limit} code tables used could not be confirmed from an open copy: {subject}.",
            "Hold the values used against the printed standards before the system is built."),
    CONDUCTOR_HAZARDOUS_VOLTAGE(
            Severity.NOTE,
            "{value}, on circuit {subject}, is dangerous to touch; protection by low voltage ends at {limit}.",
            "Have the wiring done and verified by a qualified person under the local code, with the supply isolated and locked."),

    // mounting
    MOUNTING_FASTENING_SLIPS(
            Severity.VIOLATION,
            "The shaft fastening of axis {subject} must carry {value} but holds {limit}.",
            "Use a longer or larger fastening, or one that grips by friction on the whole circumference."),

    // bill
    BILL_ITEM_WITHOUT_PRICE(
            Severity.CAUTION,
            "Item {subject} has no price; the total is short by {value} of {limit} lines.",
            "Ask for a price before quoting."),

    // study
    STUDY_QUALIFIED_PERSON(
            Severity.NOTE,
            "These results advise on {subject}; they do not replace the judgement of a qualified person.",
            "Have the design checked against the local code and by the authority having jurisdiction before it is built."),
    ;

    private final Severity severity;
    private final String template;
    private final String remedy;

    FindingCode(Severity severity, String template, String remedy) {
        this.severity = severity;
        this.template = template;
        this.remedy = remedy;
    }

    /** How much findings of this code matter. */
    public Severity severity() {
        return severity;
    }

    /** The text with its placeholders. */
    public String template() {
        return template;
    }

    /** What would fix it. */
    public String remedy() {
        return remedy;
    }

    /** The code on the wire and in the documentation: {@code DUTY-NO-DRIVE-UNIT}. */
    public String code() {
        return name().replace('_', '-');
    }

    /**
     * A finding of this code.
     *
     * @param subject what it is about, in the caller's words (an axis id, a circuit id)
     * @param pointer JSON Pointer to it
     * @param clause the rule behind it
     * @param value the offending value, if there is one
     * @param limit the limit, if there is one
     */
    public Finding at(
            String subject, String pointer, String clause, @Nullable Quantity value, @Nullable Quantity limit) {
        String text = template.replace("{subject}", subject)
                .replace("{value}", Wording.of(value))
                .replace("{limit}", Wording.of(limit));
        return new Finding(this, severity, text, pointer, clause, value, limit, remedy);
    }
}
