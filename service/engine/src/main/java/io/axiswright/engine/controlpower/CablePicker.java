package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Picks the cables of a chain's feed links out of the catalogue, the cheapest with which every terminal has enough. */
final class CablePicker {

    private final List<LaidCable> cables;
    private final List<LaidCable> coupled;
    private final Temperature conductor;
    private final boolean together;

    /**
     * A picker.
     *
     * @param coupled cables that may be joined where no single one reaches
     */
    CablePicker(List<CableAssembly> cables, List<CoupledCables> coupled, Site site, boolean brakesTogether) {
        this.cables = feeding(cables);
        this.coupled = feeding(coupled);
        this.conductor = Conductors.temperature(site);
        this.together = brakesTogether;
    }

    private static List<LaidCable> feeding(List<? extends LaidCable> all) {
        return all.stream()
                .filter(laid ->
                        laid.pieces().getFirst().use() == CableUse.CONTROL_SUPPLY && laid.powerConductor() != null)
                .sorted(LaidCable.CHEAPEST)
                .collect(Collectors.toUnmodifiableList());
    }

    /** Length of the longest cable there is, joined ones counted, m; 0 if there is none. */
    double longest() {
        return Stream.concat(cables.stream(), coupled.stream())
                .mapToDouble(cable -> cable.length().si())
                .max()
                .orElse(0);
    }

    /**
     * The chain with its cables.
     *
     * @param mostResistance of the way from the supply to any terminal, there and back, Ω
     */
    ChainPlan pick(ChainNetwork network, SourceVoltages source, double mostResistance) {
        List<List<LaidCable>> ladders = network.gateways().stream()
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

    private List<LaidCable> ladder(Length way) {
        List<LaidCable> single = ladder(way, cables);
        return single.isEmpty() ? ladder(way, coupled) : single;
    }

    private List<LaidCable> ladder(Length way, List<LaidCable> cheapestFirst) {
        List<LaidCable> rungs = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (LaidCable cable : cheapestFirst) {
            double resistance = Conductors.loopResistance(cable, conductor);
            if (cable.length().si() >= way.si() && resistance < least) {
                rungs.add(cable);
                least = resistance;
            }
        }
        return rungs;
    }
}
