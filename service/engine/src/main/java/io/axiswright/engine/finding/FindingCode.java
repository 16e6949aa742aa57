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
    TOPOLOGY_SPUR_TOO_LONG(
            Severity.VIOLATION,
            "Axis {subject} is {value} of cable from the nearest place for a gateway; the longest spur cable is {limit}.",
            "Add a place nearer to the axis, or a spur cable at least that long to the catalogue."),
    TOPOLOGY_HOST_LINK_TOO_LONG(
            Severity.VIOLATION,
            "From {subject} to the nearest place for a gateway it is {value} of cable; the longest host cable is {limit}.",
            "Add a place nearer to the host, or a host cable at least that long to the catalogue."),
    TOPOLOGY_TRUNK_TOO_LONG(
            Severity.VIOLATION,
            "No trunk leads to a place from which axis {subject} can be reached: the last hop is {value} of cable, the longest trunk cable {limit}.",
            "Add a place in between for a relaying gateway, or a trunk cable at least that long to the catalogue."),
    TOPOLOGY_TRUNK_TOO_DEEP(
            Severity.VIOLATION,
            "The nearest place from which axis {subject} can be reached takes a trunk of {value} gateways; trunks hold {limit}.",
            "Add longer host or trunk cables, or a gateway type that allows deeper trunks."),
    TOPOLOGY_PORTS_SHORT(
            Severity.VIOLATION,
            "{value} axes need a drive port each, but all gateways that {subject} can hold have {limit} together.",
            "Allow more gateways in a place, add host ports, or gateway types with more drive ports or deeper trunks."),
    TOPOLOGY_BRAKE_OUTPUTS_SHORT(
            Severity.VIOLATION,
            "{value} holding brakes need an output each, but all gateways that {subject} can hold have {limit} together.",
            "Add gateway types with more brake outputs, or switch the brakes of some axes by other means."),
    TOPOLOGY_ZONES_NEED_GATEWAYS(
            Severity.VIOLATION,
            "Kept apart, the stop zones need {value} gateways; {subject} can hold {limit}.",
            "Join stop zones, allow more gateways, or use a gateway type whose stop input does not act on all its axes."),
    TOPOLOGY_ZONES_NEED_TRUNKS(
            Severity.VIOLATION,
            "Kept apart, the stop zones need {value} trunks; the host of {subject} has {limit} ports.",
            "Join stop zones, add host ports, or use a gateway type whose stop input acts on the gateway alone."),
    TOPOLOGY_COMMAND_RATE_SHORT(
            Severity.VIOLATION,
            "The command rate of {subject} is {value}; the host port or ports for it carry {limit}.",
            "Lower the command rate, or use a host with more or faster ports."),
    TOPOLOGY_NO_LAYOUT(
            Severity.VIOLATION,
            "No layout of {subject} exists: {value} axes cannot be placed on its at most {limit} gateways within all limits at once.",
            "Widen one of the limits the findings beside this one name, or add places for gateways."),
    TOPOLOGY_NOT_FOUND(
            Severity.VIOLATION,
            "No layout of {subject} was found for {value} axes on at most {limit} gateways; that there is none is not proven.",
            "Ask for the proven search, or widen one of the limits the findings beside this one name."),
    TOPOLOGY_LIMITS_CLASH(
            Severity.VIOLATION,
            "The limit of {limit} {subject} stands in the way: with {value} and all else as it is, there is a layout.",
            "Widen this limit by the difference, or another one named beside it."),
    TOPOLOGY_PRICE_MISSING(
            Severity.CAUTION,
            "Item {subject} has no price and counts nothing in the cost of the layout: {value} of its {limit} items.",
            "Ask for the price and plan again: another layout may be cheaper."),
    TOPOLOGY_NO_STOP_INPUT(
            Severity.CAUTION,
            "Gateway {subject} has no stop input, yet {value} of its axes belong to a stop zone.",
            "Bring the stop demand to these drives by other means and have the safety function verified by a qualified person."),
    TOPOLOGY_STOPS_ALONG(
            Severity.NOTE,
            "Axis {subject} has no stop zone but hangs on a stop input that stops others: it will stop, and may start, along with them.",
            "Make sure that this is safe, above all against unexpected start, or give the axis a stop zone of its own."),

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
