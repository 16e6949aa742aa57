package io.axiswright.engine.condition;

import java.util.List;

/** What a condition can find named: words of a closed list, or items of the catalogue. */
public enum WordAttribute {
    /** The electrical code: NFPA_79 or IEC_60204_1. */
    CODE_BASIS(Reach.MACHINE, "NFPA_79", "IEC_60204_1"),
    /** The supply system: ONE_PHASE_TWO_WIRE, ONE_PHASE_THREE_WIRE, THREE_PHASE_THREE_WIRE or THREE_PHASE_FOUR_WIRE. */
    SUPPLY_SYSTEM(
            Reach.MACHINE,
            "ONE_PHASE_TWO_WIRE",
            "ONE_PHASE_THREE_WIRE",
            "THREE_PHASE_THREE_WIRE",
            "THREE_PHASE_FOUR_WIRE"),
    /** Id of the drive unit of the axis. */
    DRIVE_UNIT(Reach.AXIS),
    /** Id of the gear unit chosen for the axis; not known where there is none. */
    GEAR_UNIT(Reach.AXIS),
    /** What the loads of the circuit do: DRIVE, CONTROL_SUPPLY, VENTILATION or TRANSFORMER. */
    CIRCUIT_USE(Reach.CIRCUIT, "DRIVE", "CONTROL_SUPPLY", "VENTILATION", "TRANSFORMER"),
    /** How the circuit is connected: THREE_PHASE, LINE_TO_LINE or LINE_TO_NEUTRAL. */
    CIRCUIT_CONNECTION(Reach.CIRCUIT, "THREE_PHASE", "LINE_TO_LINE", "LINE_TO_NEUTRAL"),
    /** Id of the protective device of the circuit; not known where the catalogue has none that serves. */
    CIRCUIT_DEVICE(Reach.CIRCUIT);

    private final Reach reach;
    private final List<String> words;

    WordAttribute(Reach reach, String... words) {
        this.reach = reach;
        this.words = List.of(words);
    }

    /** What it is an attribute of. */
    public Reach reach() {
        return reach;
    }

    /** The words it can be; empty if it names an item. */
    public List<String> words() {
        return words;
    }

    /** Whether it names an item of the catalogue. */
    public boolean namesItem() {
        return words.isEmpty();
    }
}
