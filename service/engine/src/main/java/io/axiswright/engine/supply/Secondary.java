package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.design.Transformers;
import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Loads whose voltage the mains do not have and that one transformer could feed: equal phases, and rated voltages that lie
 * within the window of each other.
 *
 * @param feed their phases
 * @param voltage the rated voltage that most of their current asks for
 * @param loads the loads, by rising rated voltage
 */
record Secondary(Feed feed, Voltage voltage, List<SupplyLoad> loads) {

    private static final Comparator<SupplyLoad> BY_PHASES_AND_VOLTAGE = Comparator.comparing(SupplyLoad::feed)
            .thenComparing(l -> l.ratedVoltage().si())
            .thenComparing(SupplyLoad::id, NaturalOrder.OF_NAMES);

    /**
     * The loads by secondary: those whose rated voltages the lowest of them would accept.
     *
     * @param window how far a load's supply may lie from its rated voltage, as a share of it
     */
    static List<Secondary> of(List<SupplyLoad> misfits, double window) {
        var groups = new ArrayList<List<SupplyLoad>>();
        for (var load : misfits.stream().sorted(BY_PHASES_AND_VOLTAGE).toList()) {
            if (groups.isEmpty() || !accepts(groups.getLast().getFirst(), load, window)) {
                groups.add(new ArrayList<>());
            }
            groups.getLast().add(load);
        }
        return groups.stream()
                .map(loads -> new Secondary(loads.getFirst().feed(), mostAskedFor(loads), List.copyOf(loads)))
                .toList();
    }

    /** The same for loads that draw other currents. */
    Secondary with(List<SupplyLoad> drawing) {
        return new Secondary(feed, voltage, drawing);
    }

    /** Whether one of the loads shares the DC bus of another load. */
    boolean sharesBus(SupplyLoad other) {
        return other.busGroup() != null
                && loads.stream().anyMatch(load -> other.busGroup().equals(load.busGroup()));
    }

    /** JSON Pointer to what the first of them belongs to: there are no transformers in a request. */
    String pointer() {
        return loads.getFirst().pointer();
    }

    /** Three lines, or the two ends of one winding. */
    SupplySystem system() {
        return feed == Feed.THREE_PHASE ? SupplySystem.THREE_PHASE_THREE_WIRE : SupplySystem.ONE_PHASE_TWO_WIRE;
    }

    /** The secondary as what feeds its panel; it follows the mains ahead of it. */
    Mains mains(SupplyRequest request, Current faultCurrent) {
        Mains ahead = request.mains();
        return new Mains(
                system(),
                voltage,
                ahead.lowTolerance(),
                ahead.highTolerance(),
                ahead.frequency(),
                faultCurrent,
                null,
                null,
                earthing(request),
                null);
    }

    /** How it is earthed. */
    SystemEarthing earthing(SupplyRequest request) {
        Transformers stated = request.installation().transformers();
        return stated == null ? SystemEarthing.TN : stated.secondaryEarthing();
    }

    private static boolean accepts(SupplyLoad lowest, SupplyLoad load, double window) {
        return lowest.feed() == load.feed()
                && Limits.within(load.ratedVoltage().si(), lowest.ratedVoltage().si() * (1 + window));
    }

    private static Voltage mostAskedFor(List<SupplyLoad> loads) {
        return loads.stream()
                .map(SupplyLoad::ratedVoltage)
                .max(Comparator.comparingDouble(v -> DesignCurrents.sum(
                        loads.stream().filter(l -> l.ratedVoltage().equals(v)).toList())))
                .orElseThrow();
    }
}
