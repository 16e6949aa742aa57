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
            "No drive unit of the catalogue holds the duty of axis {subject}; the nearest miss is asked for {value} where {limit} is its limit.",
            "Add a larger drive unit or a gear to the catalogue, allow forced ventilation, or lengthen the moves."),
    DUTY_CATALOGUE_EMPTY(
            Severity.VIOLATION,
            "There is nothing to choose a drive unit for axis {subject} from: {value} drive units where at least {limit} is needed.",
            "Use a catalogue with drive units."),
    DUTY_FEED_WRONG(
            Severity.VIOLATION,
            "The drive unit of axis {subject} cannot be fed here as asked: {value} reaches it, and it may have at most {limit}.",
            "Choose a drive unit for these mains and for the feed asked for, or put a transformer ahead of it."),
    DUTY_SPEED_HIGH(
            Severity.VIOLATION,
            "Axis {subject} turns its motor at {value}; at low line its drive unit reaches {limit}.",
            "Lengthen the fastest move, lower the gear ratio, or choose a faster drive unit."),
    DUTY_BRAKE_WEAK(
            Severity.VIOLATION,
            "The holding brake of axis {subject} needs {value} with its margin; those that fit the drive unit have up to {limit}.",
            "Choose a drive unit whose frame takes a stronger brake, raise the gear ratio, or balance the load."),
    DUTY_RMS_TORQUE_HIGH(
            Severity.VIOLATION,
            "The rms torque of axis {subject} is {value}; its drive unit holds {limit} for ever at this site.",
            "Lengthen the cycle, allow forced ventilation, or choose a larger drive unit."),
    DUTY_PEAK_TORQUE_HIGH(
            Severity.VIOLATION,
            "Axis {subject} asks for {value} at its worst instant, where its drive unit has {limit} at low line.",
            "Lengthen the move, choose a law with lower acceleration, or choose a larger drive unit."),
    DUTY_WINDING_HOT(
            Severity.VIOLATION,
            "The winding of axis {subject} heats up by {value} over the repeating cycle; {limit} is permitted at this site.",
            "Break long bursts of torque up with rest, allow forced ventilation, or choose a larger drive unit."),
    DUTY_BRAKE_ABSENT(
            Severity.VIOLATION,
            "Gravity pulls at axis {subject} with {value} at the motor shaft, and it has no holding brake.",
            "Ask for a holding brake on this axis, or hold its load by other means that do not need power."),
    DUTY_DWELL_UNHELD(
            Severity.VIOLATION,
            "Axis {subject} leaves {value} of its dwells to a holding brake it does not have; the motor was taken to hold them.",
            "Ask for a holding brake on this axis, or let the motor hold."),
    DUTY_LOAD_MAY_FALL(
            Severity.CAUTION,
            "The load of axis {subject} falls when neither motor nor brake holds it: {value} at the motor shaft.",
            "Prop the load before anybody works beneath it; a single holding brake is no protection for persons. Follow the local code and have a qualified person judge it."),
    DUTY_CYCLE_DRIFTS(
            Severity.CAUTION,
            "Axis {subject} ends its cycle {value} from where it began; repeated, it runs away unless it is endless.",
            "Add the return move, unless the axis is endless."),
    DUTY_INERTIA_RATIO_HIGH(
            Severity.CAUTION,
            "The load of axis {subject} has {value} times the inertia of its motor; its control is tuned for up to {limit}.",
            "Raise the gear ratio, choose a drive unit with a larger rotor, or make sure that the transmission is stiff."),
    DUTY_ALTITUDE_HIGH(
            Severity.CAUTION,
            "At {subject} the altitude is {value}; the rule by which ratings were lowered is stated up to {limit}.",
            "Ask for ratings at this altitude; clearances in air need checking as well."),
    DUTY_SELF_LOCKING(
            Severity.NOTE,
            "No load drives axis {subject} backwards: it returns no energy, and its motor works even while it lowers.",
            "Do not count on it to hold a load that can hurt somebody: vibration and wear undo it."),

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
