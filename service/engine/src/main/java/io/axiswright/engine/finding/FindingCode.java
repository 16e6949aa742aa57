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
    BRAKING_LINE_ABOVE_TRIP(
            Severity.VIOLATION,
            "At high line the DC bus of {subject} stands at {value}, not below the {limit} at which its drives trip.",
            "Use drive units for this line voltage, or a transformer ahead of them; no braking unit can help."),
    BRAKING_RESISTOR_HOT(
            Severity.CAUTION,
            "The braking resistor of {subject} reaches {value} (limit {limit}): it burns skin and ignites what touches it.",
            "Mount it guarded, marked and clear of anything that burns, with a thermal switch that opens the supply; follow the local code and licensed practice."),
    BRAKING_BUS_STORED_ENERGY(
            Severity.CAUTION,
            "The DC bus of {subject} holds up to {value} and stays dangerous after power-off.",
            "Wait until it is discharged and measure that it is before touching anything; post the waiting time; follow the local code and licensed practice."),
    BRAKING_BUS_SHARED(
            Severity.NOTE,
            "The axes of {subject} are taken to share one DC bus; drives do so only if they are wired bus to bus.",
            "Wire the buses together as the drives allow, with their protection and pre-charging, or leave the bus group out."),
    BRAKING_CYCLES_UNRELATED(
            Severity.NOTE,
            "The cycles of {subject} have unrelated periods; the cycle case is a guaranteed bound over every alignment, not a course over time.",
            "Give the axes one period, or periods in a ratio of small whole numbers, for a sharper answer."),
    BRAKING_CYCLE_UNSETTLED(
            Severity.NOTE,
            "The chopper of {subject} never falls into step with the cycle; the worst of many cycles is given.",
            "Nothing needs to be done; a braking unit with other switching voltages would give a repeating course."),
    BRAKING_STOP_UNCONTROLLED(
            Severity.CAUTION,
            "A category 0 stop returns no energy to the bus but leaves axis {subject} without torque for {value}, until its holding brake holds; a vertical load falls meanwhile.",
            "Check the fall and the brake's wear, use category 1 where the risk assessment allows it, and follow the local code and licensed practice."),
    BRAKING_STOP_WITHOUT_BRAKE(
            Severity.CAUTION,
            "A category 0 stop leaves axis {subject} without torque, and it has no holding brake: only friction stops it, and a vertical load falls.",
            "Add a holding brake, or use category 1 where the risk assessment allows it; follow the local code and licensed practice."),

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
