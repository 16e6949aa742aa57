package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One DC bus.
 *
 * @param id name of the bus group, or id of the axis that has a bus of its own
 * @param axes ids of the axes on it
 * @param verdict what the returned energy asks for
 * @param brakingUnit catalogue id of the braking unit chosen; none if absent
 * @param capacitance capacitance of all its drive units
 * @param nominalVoltage rectified voltage at nominal line
 * @param floorVoltage rectified voltage at high line: the bus never falls below, and every case starts from it or higher
 * @param tripVoltage lowest trip voltage of its drive units
 * @param cycleBasis how the cycle case was worked out
 * @param cases every case, with the braking unit chosen at work or with none
 * @param rejected the braking units tried in vain, cheapest first; dearer ones than the one chosen were not tried
 */
public record GroupBraking(
        String id,
        List<String> axes,
        BrakingVerdict verdict,
        @Nullable String brakingUnit,
        Capacitance capacitance,
        Voltage nominalVoltage,
        Voltage floorVoltage,
        Voltage tripVoltage,
        CycleBasis cycleBasis,
        List<BrakingCase> cases,
        List<RejectedUnit> rejected) {

    /** Keeps the lists from being changed. */
    public GroupBraking {
        axes = List.copyOf(axes);
        cases = List.copyOf(cases);
        rejected = List.copyOf(rejected);
    }
}
