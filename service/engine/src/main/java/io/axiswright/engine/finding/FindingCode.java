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

    SUPPLY_VOLTAGE_MISFIT(
            Severity.VIOLATION,
            "{subject} is made for {limit}; the nearest voltage the mains have for it is {value}.",
            "Put a transformer ahead of it, the rating of which the result states, or choose a unit for the mains voltage."),
    SUPPLY_PHASES_MISSING(
            Severity.VIOLATION,
            "{subject} needs {value} phases; the mains have {limit}.",
            "Choose a unit for one phase, or bring a three-phase supply to the machine."),
    SUPPLY_DC_FED_LOAD(
            Severity.CAUTION,
            "{subject} takes {value} from a DC bus; the AC supply does not count it.",
            "State what feeds that DC bus as a load of its own."),
    SUPPLY_DEVICE_WINDOW_EMPTY(
            Severity.VIOLATION,
            "The protective device of {subject} must carry {value} and be rated at most {limit}; no standard rating does both.",
            "Choose a unit that allows a larger protective device or takes less current."),
    SUPPLY_DEVICE_MISSING(
            Severity.VIOLATION,
            "The catalogue lacks a {subject}: rated {value} or more, at most {limit}.",
            "Add such a device to the catalogue."),
    SUPPLY_LEAKAGE_HIGH(
            Severity.CAUTION,
            "The protective conductor of {subject} carries {value} in normal operation, above {limit}.",
            "Connect it permanently and make its protective conductor at least 10 mm2 copper (16 mm2 aluminium) throughout, or run a second one."),
    SUPPLY_RESIDUAL_DEVICE_TRIPS(
            Severity.CAUTION,
            "The standing leakage of {subject} is {value}; a residual-current device for the protection of people leaves room for {limit}.",
            "Choose a residual-current device rated well above the leakage (type B behind three-phase rectifiers), or other fault protection that the local code allows."),
    SUPPLY_MAINS_DANGER(
            Severity.CAUTION,
            "{subject} is fed from mains of {value}, with fault currents up to {limit}; contact or an arc can kill.",
            "Before work: switch off, lock, wait until DC buses have discharged, prove dead. Let a qualified person do and check the work by the local code."),

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
