package io.axiswright.engine.finding;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.ResourceTable;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The catalogue of findings, by discipline. Severity, text and remedy of each stand in {@code finding/findings.csv}; a code,
 * once released, never changes its meaning.
 */
public enum FindingCode {
    // duty
    DUTY_NO_DRIVE_UNIT,
    DUTY_CATALOGUE_EMPTY,
    DUTY_FEED_NONE,
    DUTY_FEED_WRONG,
    DUTY_SPEED_HIGH,
    DUTY_BRAKE_WEAK,
    DUTY_RMS_TORQUE_HIGH,
    DUTY_RMS_SPEED_HIGH,
    DUTY_PEAK_TORQUE_HIGH,
    DUTY_WINDING_HOT,
    DUTY_STANDSTILL_UNSTATED,
    DUTY_FAN_NEEDED,
    DUTY_BRAKE_ABSENT,
    DUTY_DWELL_UNHELD,
    DUTY_LOAD_MAY_FALL,
    DUTY_FRICTION_HOLDS,
    DUTY_CYCLE_DRIFTS,
    DUTY_CYCLE_RUNS_OUT,
    DUTY_PAYLOAD_SWITCHED_MOVING,
    DUTY_PAYLOAD_SWITCHED_AT_ONCE,
    DUTY_PAYLOAD_NEVER_PUT_DOWN,
    DUTY_COURSE_OVER_TIME,
    DUTY_TOP_SPEED_UNREACHED,
    DUTY_INERTIA_RATIO_HIGH,
    DUTY_ALTITUDE_HIGH,
    DUTY_SELF_LOCKING,
    DUTY_SELF_LOCKING_HOLDS,
    DUTY_SCREW_WHIRLS,
    DUTY_SCREW_BUCKLES,
    DUTY_NUT_LIFE_SHORT,
    DUTY_SCREW_SHORT,
    DUTY_SCREW_UNCHECKED,
    DUTY_NUT_UNCHECKED,
    DUTY_BELT_SLACK,
    DUTY_BELT_OVERLOADED,
    DUTY_BELT_UNCHECKED,
    DUTY_GEAR_SPEED_HIGH,
    DUTY_GEAR_RMS_TORQUE_HIGH,
    DUTY_GEAR_PEAK_TORQUE_HIGH,
    DUTY_GEAR_STOP_TORQUE_HIGH,
    DUTY_GEAR_UNIT_UNFIT,
    DUTY_LONGER_MOVES_HOLD,
    DUTY_RESERVES_UNSEARCHED,
    DUTY_SHAFT_LOAD_HIGH,
    DUTY_SHAFT_BEARING_SHORT,
    DUTY_SHAFT_UNCHECKED,

    // topology
    TOPOLOGY_SPUR_TOO_LONG,
    TOPOLOGY_HOST_LINK_TOO_LONG,
    TOPOLOGY_TRUNK_TOO_LONG,
    TOPOLOGY_TRUNK_TOO_DEEP,
    TOPOLOGY_PORTS_SHORT,
    TOPOLOGY_BRAKE_OUTPUTS_SHORT,
    TOPOLOGY_ZONES_NEED_GATEWAYS,
    TOPOLOGY_ZONES_NEED_TRUNKS,
    TOPOLOGY_COMMAND_RATE_SHORT,
    TOPOLOGY_NO_LAYOUT,
    TOPOLOGY_NOT_FOUND,
    TOPOLOGY_LIMITS_CLASH,
    TOPOLOGY_GROWTH_CLASHES,
    TOPOLOGY_SEPARATION_NEEDS_GATEWAYS,
    TOPOLOGY_SEPARATION_UNMET,
    TOPOLOGY_PRICE_MISSING,
    TOPOLOGY_CABLES_JOINED,
    TOPOLOGY_NO_STOP_INPUT,
    TOPOLOGY_STOPS_ALONG,

    // controlpower
    CONTROL_VOLTAGE_LOW,
    CONTROL_VOLTAGE_BELOW_BAND,
    CONTROL_VOLTAGE_ABOVE_BAND,
    CONTROL_CHAIN_COLLAPSE,
    CONTROL_CABLE_NONE,
    CONTROL_CABLES_JOINED,
    CONTROL_SUPPLY_NONE,
    CONTROL_SUPPLY_OVERLOADED,
    CONTROL_START_LOCK,
    CONTROL_SUPPLY_MAINS_VOLTAGE,
    CONTROL_PASS_THROUGH_CURRENT,
    CONTROL_SPUR_WITHOUT_POWER,
    CONTROL_KEEP_ALIVE_ABSENT,
    CONTROL_KEEP_ALIVE_HOLD_UP,
    CONTROL_HOLD_UP_SHORT,
    CONTROL_STOP_OUTLASTS_HOLD_UP,
    CONTROL_BRAKE_RELEASE,
    CONTROL_OUTPUT_UNPROTECTED,
    CONTROL_OUTPUT_RATING,
    CONTROL_OUTPUT_NOT_CLEARED,
    CONTROL_OUTPUT_CONDUCTOR,
    CONTROL_KEEP_ALIVE_SHORT,
    CONTROL_REDUNDANCY_NONE,

    // braking
    BRAKING_BUS_OVERVOLTAGE,
    BRAKING_BUS_UNPROVEN,
    BRAKING_LINE_ABOVE_TRIP,
    BRAKING_RESISTOR_HOT,
    BRAKING_RESISTOR_ALTITUDE,
    BRAKING_UNIT_FAILURE,
    BRAKING_UNITS_PARALLEL,
    BRAKING_RESISTOR_CABLE,
    BRAKING_LOWERING_LONG,
    BRAKING_BUS_STORED_ENERGY,
    BRAKING_BUS_SHARED,
    BRAKING_CYCLES_UNRELATED,
    BRAKING_CYCLE_UNSETTLED,

    // stopping
    STOPPING_LOAD_UNHELD,
    STOPPING_LOCK_UNSURE,
    STOPPING_BRAKE_WEAK,
    STOPPING_BRAKE_ENERGY_HIGH,
    STOPPING_GEAR_TORQUE_HIGH,
    STOPPING_SAFEGUARD_NEAR,
    STOPPING_SAFEGUARD_VAIN,
    STOPPING_FIELD_LOW,
    STOPPING_LOAD_FALLS,
    STOPPING_WITHOUT_TORQUE,
    STOPPING_BY_FRICTION,
    STOPPING_NEVER_RESTS,
    STOPPING_LOAD_UNEVEN,
    STOPPING_BRAKE_UNCHECKED,
    STOPPING_DISTANCE_CALCULATED,
    STOPPING_RULE_FROM_MEMORY,

    // supply
    SUPPLY_FAULT_RATING_LOW,
    SUPPLY_VOLTAGE_MISFIT,
    SUPPLY_TRANSFORMER_NEEDED,
    SUPPLY_TRANSFORMER_NONE,
    SUPPLY_TRANSFORMER_DATA_MISSING,
    SUPPLY_PHASES_MISSING,
    SUPPLY_DC_FED_LOAD,
    SUPPLY_BUS_VOLTAGE_MISFIT,
    SUPPLY_BUS_FEED_OVERLOADED,
    SUPPLY_DEVICE_WINDOW_EMPTY,
    SUPPLY_FEEDER_SELECTIVITY,
    SUPPLY_DISCONNECT_NEEDED,
    SUPPLY_DEVICE_MISSING,
    SUPPLY_LEAKAGE_HIGH,
    SUPPLY_RESIDUAL_DEVICE_TRIPS,
    SUPPLY_RESIDUAL_DEVICE_TYPE,
    SUPPLY_RESIDUAL_RATING_HIGH,
    SUPPLY_INRUSH_TRIPS,
    SUPPLY_INRUSH_NOT_JUDGED,
    SUPPLY_MAINS_DANGER,

    // conductor
    CONDUCTOR_NONE_FITS,
    CONDUCTOR_TABLE_EXCEEDED,
    CONDUCTOR_DEVICE_TOO_SMALL,
    CONDUCTOR_DEVICE_TOO_LARGE,
    CONDUCTOR_DEVICE_BY_MOTOR_RULE,
    CONDUCTOR_FAULT_UNCHECKED,
    CONDUCTOR_TABLE_FROM_MEMORY,
    CONDUCTOR_HAZARDOUS_VOLTAGE,
    CONDUCTOR_INSULATION_ASSUMED,
    CONDUCTOR_TERMINAL_TOO_SMALL,
    CONDUCTOR_NOT_FLEXIBLE,
    CONDUCTOR_ALUMINIUM,
    CONDUCTOR_TERMINAL_NOT_FOR_ALUMINIUM,

    // containment
    CONTAINMENT_OVERFILLED,
    CONTAINMENT_FILL_HIGH,
    CONTAINMENT_CABLES_JAM,
    CONTAINMENT_BEND_TIGHT,
    CONTAINMENT_GLAND_MISFIT,
    CONTAINMENT_CABLE_STIFF,
    CONTAINMENT_CABLES_UNKNOWN,

    // enclosure
    ENCLOSURE_TOO_HOT,
    ENCLOSURE_LOSS_UNKNOWN,

    // energy
    ENERGY_LOAD_LOSS_UNKNOWN,
    ENERGY_CURRENCIES_DIFFER,
    ENERGY_THICKER_CABLE_CHEAPER,

    // harmonic
    HARMONIC_INPUT_UNKNOWN,
    HARMONIC_NETWORK_WEAK,
    HARMONIC_OTHERS_AS_SINES,
    HARMONIC_ORDER_HIGH,
    HARMONIC_DEMAND_DISTORTION_HIGH,
    HARMONIC_VOLTAGE_DISTORTION_HIGH,
    HARMONIC_EQUIPMENT_NOT_JUDGED,
    HARMONIC_EQUIPMENT_TOO_HIGH,
    HARMONIC_EQUIPMENT_RATIO_LOW,

    // fault
    FAULT_INTERRUPTING_RATING_LOW,
    FAULT_LOAD_RATING_LOW,
    FAULT_MACHINE_RATING_LOW,
    FAULT_DISCONNECTION_SLOW,
    FAULT_CONDUCTOR_HOT,
    FAULT_RESIDUAL_DEVICE_NEEDED,
    FAULT_FIRST_FAULT_STAYS,
    FAULT_MOTORS_FEED_BACK,
    FAULT_CURRENTS_CALCULATED,
    FAULT_TABLE_FROM_MEMORY,
    FAULT_DEVICE_TIMES_UNKNOWN,
    FAULT_EARTH_LOOP_UNKNOWN,
    FAULT_SUPPLY_ASSUMED,
    FAULT_RATING_UNSTATED,

    // mounting
    MOUNTING_FASTENING_SLIPS,
    MOUNTING_KEY_REVERSAL,
    MOUNTING_SET_SCREW_REVERSAL,
    MOUNTING_SET_SCREW_SAFETY,
    MOUNTING_HUB_YIELDS,
    MOUNTING_KEY_SIZE_NONE,
    MOUNTING_KEY_LENGTH,
    MOUNTING_CLAMP_SCATTER,
    MOUNTING_BOND_REVERSAL,
    MOUNTING_SHAFT_SHORT,
    MOUNTING_PART_NONE,
    MOUNTING_FACE_FIT,
    MOUNTING_FOOT_KIT_NONE,
    MOUNTING_FOOT_PACKING,
    MOUNTING_SEAT_HIGH,

    // bill
    BILL_ITEM_WITHOUT_PRICE,
    BILL_NETWORK_MISSING,
    BILL_AXIS_UNCONNECTED,
    BILL_BUS_LINK_NONE,
    BILL_RESISTOR_CABLE_NONE,
    BILL_STOP_CABLE_NONE,
    BILL_CABLES_JOINED,
    BILL_GLAND_NONE,
    BILL_CABLE_END_TOO_WIDE,
    BILL_CABLE_END_CONDUIT,
    BILL_CABLE_END_PARTS_NONE,
    BILL_CABLE_END_TOOL_NONE,
    BILL_DISCONNECTOR_NONE,
    BILL_DISCONNECTOR_SPARED,
    BILL_PIECE_LONGER_THAN_REEL,
    BILL_LARGER_ORDER_CHEAPER,
    BILL_SPARE_BESIDE_SURPLUS,
    BILL_RULE_UNMET,
    BILL_ITEMS_EXCLUDED,
    BILL_OPTION_EXCLUDED,

    // study
    STUDY_QUALIFIED_PERSON,
    STUDY_NO_POWER_CABLE,
    STUDY_PROTECTIVE_CORE_THIN,
    STUDY_TERMINAL_MISFIT,
    STUDY_VENTILATION_NONE,
    STUDY_DC_BUS_UNFED,
    STUDY_BUS_ACROSS_LINES,
    STUDY_STOP_TOO_HARD;

    private final Severity severity;
    private final String template;
    private final String remedy;

    FindingCode() {
        NamedCsvRecord row = Objects.requireNonNull(Words.BY_CODE.get(code()), () -> "findings.csv lacks " + code());
        severity = Severity.valueOf(row.getField("severity"));
        template = row.getField("template");
        remedy = row.getField("remedy");
    }

    /** The rows of the table; a class of its own because an enum's constants are made before its static fields. */
    private static final class Words {
        static final Map<String, NamedCsvRecord> BY_CODE = ResourceTable.rows("/finding/findings.csv").stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.getField("code"), Function.identity()));
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
     * @param pointer JSON Pointer to it in the request
     * @param clause the rule behind it
     * @param value the offending value, if there is one
     * @param limit the limit, if there is one
     */
    public Finding at(
            String subject, String pointer, String clause, @Nullable Quantity value, @Nullable Quantity limit) {
        String text = template.replace("{subject}", subject)
                .replace("{value}", Wording.of(value))
                .replace("{limit}", Wording.of(limit));
        return new Finding(this, severity, subject, text, pointer, clause, value, limit, remedy);
    }
}
