package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Picks the cables of a chain's feed links out of the catalogue, the cheapest with which every terminal has enough. */
final class CablePicker {

    private static final Comparator<CableAssembly> CHEAPEST = Comparator.comparing(
                    (CableAssembly cable) -> Price.of(cable))
            .thenComparing(cable -> cable.length().si())
            .thenComparing(CableAssembly::id, NaturalOrder.OF_NAMES);

    private final List<CableAssembly> cables;
    private final Temperature conductor;
    private final boolean together;

    CablePicker(List<CableAssembly> cables, Site site, boolean brakesTogether) {
        this.cables = cables.stream()
                .filter(cable -> cable.use() == CableUse.CONTROL_SUPPLY && cable.powerConductor() != null)
                .sorted(CHEAPEST)
                .toList();
        this.conductor = Conductors.temperature(site);
        this.together = brakesTogether;
    }

    /** Length of the longest cable there is, m; 0 if there is none. */
    double longest() {
        return cables.stream().mapToDouble(cable -> cable.length().si()).max().orElse(0);
    }

    /**
     * The chain with its cables.
     *
     * @param mostResistance of the way from the supply to any terminal, there and back, Ω
     */
    ChainPlan pick(ChainNetwork network, SourceVoltages source, double mostResistance) {
        List<List<CableAssembly>> ladders = network.gateways().stream()
                .map(node -> ladder(node.feedLength()))
                .toList();
        return new CableClimb(network, source, mostResistance, conductor, together, ladders).climb();
    }

    /** Whether every link of a plan that suffices has its cheapest cable. */
    boolean isCheapest(ChainPlan plan) {
        return plan.suffices()
                && IntStream.range(0, plan.cables().size())
                        .allMatch(k -> ladder(plan.network().gateways().get(k).feedLength())
                                .getFirst()
                                .equals(plan.cables().get(k).orElse(null)));
    }

    private List<CableAssembly> ladder(Length way) {
        List<CableAssembly> rungs = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (CableAssembly cable : cables) {
            double resistance = Conductors.loopResistance(cable, conductor);
            if (cable.length().si() >= way.si() && resistance < least) {
                rungs.add(cable);
                least = resistance;
            }
        }
        return rungs;
    }
}
