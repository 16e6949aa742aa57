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
    MOUNTING_KEY_REVERSAL(
            Severity.VIOLATION,
            "The torque of axis {subject} reverses: its key, which must carry {value}, shifts through its clearance at every reversal, as friction carries {limit} of it.",
            "Use a clamp hub or a bonded joint that carries the torque by itself; keep the key as a second line of defence if at all."),
    MOUNTING_KEY_SIZE_NONE(
            Severity.VIOLATION,
            "The tables have no parallel key for the shaft of axis {subject}, {value}.",
            "Use a clamp hub or a bonded joint."),
    MOUNTING_KEY_LENGTH(
            Severity.NOTE,
            "The key of axis {subject} engages over {value}; only {limit} count, as the near end takes the load.",
            "Shorten the key, or leave the surplus as it is."),
    MOUNTING_CLAMP_SCATTER(
            Severity.CAUTION,
            "The clamp of axis {subject} must carry {value}; with the scatter of screws tightened by torque wrench it may hold only {limit}.",
            "Add preload or screws, or tighten by a method with less scatter."),
    MOUNTING_BOND_REVERSAL(
            Severity.CAUTION,
            "The torque of axis {subject} reverses, but its bonded joint is reduced only to {value}; alternating load leaves at most {limit}.",
            "State a reduction that includes alternating load, from the adhesive's data."),
    MOUNTING_SHAFT_SHORT(
            Severity.VIOLATION,
            "The fastening of axis {subject} engages over {value}, but the usable shaft is {limit} long.",
            "Use a shorter fastening or a drive unit with a longer shaft."),
    MOUNTING_PART_NONE(
            Severity.CAUTION,
            "No part of the catalogue fastens the shaft of axis {subject}, {value}, in the way stated.",
            "Add the part to the catalogue, or bring it along."),
    MOUNTING_FACE_FIT(
            Severity.NOTE,
            "Axis {subject} with its shaft of {value} is held by its face; the face of the machine is not checked.",
            "Compare pilot, bolt circle and threads with the drawings of both sides."),
    MOUNTING_FOOT_KIT_NONE(
            Severity.VIOLATION,
            "Axis {subject} stands on feet at a shaft height of {value}, but no foot kit fits its frame size.",
            "Add a foot kit for the frame size to the catalogue, or mount the drive unit by its face."),
    MOUNTING_FOOT_PACKING(
            Severity.NOTE,
            "Axis {subject} needs {value} of shims or a riser under its feet to reach a shaft height of {limit}.",
            "Add the shims or the riser to the drawing."),
    MOUNTING_SEAT_HIGH(
            Severity.VIOLATION,
            "On its feet the shaft of axis {subject} is {value} high, above the {limit} the machine asks for; feet cannot be lowered.",
            "Cut the seat of the machine, or use a drive unit or foot kit with a lower shaft."),

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
    STUDY_NO_POWER_CABLE(
            Severity.VIOLATION,
            "Circuit {subject} needs conductors of {value}; the largest fitting power cable of the catalogue has {limit}.",
            "Add a larger power cable with the right number of cores to the catalogue, or split the circuit."),
    STUDY_DC_BUS_UNFED(
            Severity.VIOLATION,
            "Axis {subject} runs from a DC bus of {value}, and nothing in the design feeds that bus.",
            "Join the axis to a bus group with a mains-fed drive unit, or take a mains-fed drive unit."),
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
