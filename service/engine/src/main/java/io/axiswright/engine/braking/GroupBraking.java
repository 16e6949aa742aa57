package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One DC bus.
 *
 * @param id name of the bus group, or id of the axis that has a bus of its own
 * @param axes ids of the axes on it, in the order of ids
 * @param verdict what the returned energy asks for
 * @param brakingUnit catalogue id of the braking unit chosen; none if absent
 * @param chosen how that unit stands to its limits; absent without one
 * @param capacitance capacitance of all its drive units
 * @param nominalVoltage rectified voltage at nominal line
 * @param floorVoltage rectified voltage at high line: the bus never falls below, and every case starts from it or higher
 * @param tripVoltage lowest trip voltage of its drive units
 * @param cycleBasis how the cycle case was worked out
 * @param settlingCycles how many cycles from a cold bus it took to the one that repeats, that one included; absent for a bound
 * @param settlingResidual how much the energy at the end of that cycle differs from that at its start; absent for a bound
 * @param alignment the worst alignment found of axes whose cycles have unrelated periods; absent otherwise
 * @param highestLineVoltage the highest line voltage tolerated: that of the bus, or that which its drive units stand by their rating,
 *     10 % over their rated voltage (IEC 60038), where that is lower. Units on a DC bus have no say in the latter
 * @param highestBusLineVoltage the highest line voltage at which the bus stays under its trip in every case, with the braking unit
 *     chosen or with none; where even the nominal voltage is too high, a lower one
 * @param lines the bus at high, nominal and low line
 * @param reliefs how long stops would have to last to need no braking unit; only for those that do need one
 * @param unaidedStops within which times each stop zone could decelerate without a braking unit; only where braking alone is
 *     asked for, empty if the cycle itself needs one
 * @param cases every case, with the braking unit chosen at work or with none
 * @param rejected the braking units tried in vain, cheapest first; dearer ones than the one chosen were not tried
 */
public record GroupBraking(
        String id,
        List<String> axes,
        BrakingVerdict verdict,
        @Nullable String brakingUnit,
        @Nullable ChosenUnit chosen,
        Capacitance capacitance,
        Voltage nominalVoltage,
        Voltage floorVoltage,
        Voltage tripVoltage,
        CycleBasis cycleBasis,
        @Nullable Integer settlingCycles,
        @Nullable Energy settlingResidual,
        @Nullable Alignment alignment,
        Voltage highestLineVoltage,
        Voltage highestBusLineVoltage,
        List<LineOutcome> lines,
        List<ZoneRelief> reliefs,
        @Nullable List<UnaidedStop> unaidedStops,
        List<BrakingCase> cases,
        List<RejectedUnit> rejected) {

    /** Keeps the lists from being changed. */
    public GroupBraking {
        axes = List.copyOf(axes);
        cases = List.copyOf(cases);
        rejected = List.copyOf(rejected);
        lines = List.copyOf(lines);
        reliefs = List.copyOf(reliefs);
        unaidedStops = unaidedStops == null ? null : List.copyOf(unaidedStops);
    }
}
