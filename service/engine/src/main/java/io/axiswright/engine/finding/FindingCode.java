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
    CONTROL_VOLTAGE_BELOW_BAND(
            Severity.CAUTION,
            "The control supply reaches {subject} with {value}: enough by its own data, but below {limit}, the lower end of the band for programmable equipment.",
            "Make sure that the item's own least voltage may be relied on, or use a larger conductor."),
    CONTROL_VOLTAGE_ABOVE_BAND(
            Severity.VIOLATION,
            "Control supply {subject} is set to {value}, above {limit}, the upper end of the band for programmable equipment.",
            "Use a control supply with a lower output voltage."),
    CONTROL_CHAIN_COLLAPSE(
            Severity.VIOLATION,
            "Chain {subject} has no stable control voltage: it collapses at {value} of the load, and {limit} is needed.",
            "Use a larger conductor, feed the chain at a second point, or split it."),
    CONTROL_CABLE_NONE(
            Severity.VIOLATION,
            "No control-supply cable of the catalogue reaches {subject}: {value} is needed, the longest is {limit}.",
            "Add a longer control-supply cable to the catalogue, or move the control supply or the gateway."),
    CONTROL_SUPPLY_NONE(
            Severity.VIOLATION,
            "No control supply of the catalogue can be fed from this mains; chain {subject} takes {value}.",
            "Add a control supply with the phases of the mains to the catalogue."),
    CONTROL_SUPPLY_OVERLOADED(
            Severity.VIOLATION,
            "Control supply {subject} must give {value}, reserve included, but gives {limit} at the enclosure's temperature.",
            "Add a larger control supply to the catalogue, cool the enclosure, stagger the brakes, or split the chain."),
    CONTROL_START_LOCK(
            Severity.VIOLATION,
            "As control supply {subject} rises, its loads draw {value}; it gives {limit} and would hang at low voltage.",
            "Use a larger control supply, or switch the loads on in groups."),
    CONTROL_SUPPLY_MAINS_VOLTAGE(
            Severity.CAUTION,
            "Control supply {subject} is rated for {limit}, but the mains is {value}.",
            "Add a control supply for the mains voltage to the catalogue, or feed it through a transformer."),
    CONTROL_PASS_THROUGH_CURRENT(
            Severity.VIOLATION,
            "{value} of control current enters gateway {subject}; its terminals carry {limit}.",
            "Feed the chain at a second point, split it, or use a gateway whose terminals carry more."),
    CONTROL_SPUR_WITHOUT_POWER(
            Severity.VIOLATION,
            "The spur of axis {subject} has no 24 V conductors, but its drive unit needs {value}.",
            "Use a spur with 24 V conductors."),
    CONTROL_KEEP_ALIVE_ABSENT(
            Severity.VIOLATION,
            "Axis {subject} must keep its position while mains is off, but its drive unit has no keep-alive input.",
            "Use a drive unit with a keep-alive input, or let the axis find its position anew."),
    CONTROL_KEEP_ALIVE_HOLD_UP(
            Severity.NOTE,
            "After mains is lost, control supply {subject} stays up for {value}; {limit} axes on it must keep their position for longer.",
            "Feed them from a buffered supply that lasts as long as mains may be off."),
    CONTROL_HOLD_UP_SHORT(
            Severity.CAUTION,
            "Control supply {subject} stays up for {value} after mains is lost; interruptions of {limit} are to be ridden through.",
            "Use a control supply with a longer hold-up time, or a larger one."),
    CONTROL_BRAKE_RELEASE(
            Severity.NOTE,
            "{value} holding brakes hang on control supply {subject}: they engage when it fails, and a load can fall when one is released while its drive gives no torque.",
            "Release brakes only through the drives, secure suspended loads before work, and follow the local code."),

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
