package io.axiswright.engine.study;

import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Feeder;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Matches the circuits of two studies by the loads they feed, and says what of them differs. */
final class MarketCircuits {

    private MarketCircuits() {}

    static List<CircuitDifference> differences(StudyResult here, StudyResult there) {
        Map<List<String>, MarketCircuit> first = byLoads(here);
        Map<List<String>, MarketCircuit> second = byLoads(there);
        List<CircuitDifference> differences = new ArrayList<>();
        first.forEach((loads, circuit) -> add(loads, circuit, second.get(loads), differences));
        second.forEach((loads, circuit) -> {
            if (!first.containsKey(loads)) {
                add(loads, null, circuit, differences);
            }
        });
        return List.copyOf(differences);
    }

    private static void add(
            List<String> loads,
            @Nullable MarketCircuit here,
            @Nullable MarketCircuit there,
            List<CircuitDifference> differences) {
        Set<CircuitAspect> differing =
                here == null || there == null ? EnumSet.of(CircuitAspect.LOADS) : differing(here, there);
        if (!differing.isEmpty()) {
            differences.add(new CircuitDifference(loads, here, there, List.copyOf(differing)));
        }
    }

    private static Set<CircuitAspect> differing(MarketCircuit here, MarketCircuit there) {
        var differing = EnumSet.allOf(CircuitAspect.class);
        differing.removeIf(aspect -> Objects.equals(value(here, aspect), value(there, aspect)));
        return differing;
    }

    private static List<@Nullable Object> value(MarketCircuit circuit, CircuitAspect aspect) {
        return switch (aspect) {
            case LOADS -> values();
            case CONNECTION -> values(circuit.lines(), circuit.voltage());
            case CURRENT -> values(circuit.current());
            case DESIGN_CURRENT -> values(circuit.designCurrent());
            case DEVICE -> values(circuit.device(), circuit.deviceRating());
            case CONDUCTOR -> values(circuit.conductor(), circuit.conductorsPerLine());
            case PROTECTIVE_CONDUCTOR -> values(circuit.protectiveConductor());
            case VOLTAGE_DROP -> values(circuit.voltageDrop());
            case DECIDING_LIMIT -> values(circuit.decidingLimit(), circuit.decidingClause());
        };
    }

    private static List<@Nullable Object> values(@Nullable Object... values) {
        List<@Nullable Object> list = new ArrayList<>();
        for (Object value : values) {
            list.add(value);
        }
        return list;
    }

    /** The feeder under no loads, then the circuits under theirs, sorted. */
    private static Map<List<String>, MarketCircuit> byLoads(StudyResult study) {
        Map<String, CircuitConductors> conductors = study.conductors().circuits().stream()
                .collect(Collectors.toMap(CircuitConductors::id, Function.identity()));
        Map<List<String>, MarketCircuit> circuits = new LinkedHashMap<>();
        CircuitConductors ofFeeder = conductors.get("feeder");
        if (ofFeeder != null) {
            circuits.put(List.of(), feeder(study.supply().feeder(), ofFeeder));
        }
        for (BranchCircuit branch : study.supply().circuits()) {
            CircuitConductors sized = Objects.requireNonNull(conductors.get(branch.id()));
            circuits.put(branch.loads().stream().sorted().toList(), branch(branch, sized));
        }
        return circuits;
    }

    private static MarketCircuit feeder(Feeder feeder, CircuitConductors sized) {
        return circuit(
                sized, feeder.lines(), feeder.voltage(), feeder.current(), feeder.designCurrent(), feeder.device());
    }

    private static MarketCircuit branch(BranchCircuit branch, CircuitConductors sized) {
        return circuit(
                sized, branch.lines(), branch.voltage(), branch.current(), branch.designCurrent(), branch.device());
    }

    private static MarketCircuit circuit(
            CircuitConductors sized,
            List<String> lines,
            Voltage voltage,
            Current current,
            Current designCurrent,
            @Nullable String device) {
        return new MarketCircuit(
                sized.id(),
                lines,
                voltage,
                current,
                designCurrent,
                device,
                sized.deviceRating(),
                sized.conductor(),
                sized.conductorsPerLine(),
                sized.protectiveConductor(),
                sized.correctedAmpacity(),
                sized.voltageDrop(),
                sized.voltageDropShare(),
                sized.decidingLimit(),
                sized.decidingClause(),
                sized.ampacityTable());
    }
}
