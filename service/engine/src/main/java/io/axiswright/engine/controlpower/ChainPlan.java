package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A chain with its cables picked for one kind of control supply.
 *
 * @param network the chain
 * @param source between what voltages the supply lies
 * @param cables the cable of every feed link; none where no cable is long enough
 * @param state how it works; none if a cable is missing or the voltage collapses
 * @param currents the currents to size the supply for: the state's, or, where there is none, those without cable losses
 */
record ChainPlan(
        ChainNetwork network,
        SourceVoltages source,
        List<Optional<LaidCable>> cables,
        Optional<ChainState> state,
        ChainState currents) {

    boolean isCabled() {
        return cables.stream().allMatch(Optional::isPresent);
    }

    boolean holds() {
        return state.map(ChainState::holds).orElse(false);
    }

    /** Whether it holds and no gateway has to pass on more current than it can. */
    boolean suffices() {
        return holds()
                && IntStream.range(0, cables.size())
                        .allMatch(k -> currents.linkCurrent(k)
                                <= network.gateways()
                                        .get(k)
                                        .gateway()
                                        .passThroughCurrent()
                                        .si());
    }

    /** Resistance of the longest way from the supply to a terminal, there and back, Ω. */
    double longestWay(Temperature conductor) {
        double[] ways = network.wayResistances(resistances(conductor));
        return ways[ChainNetwork.farthest(ways)];
    }

    /** Price of its cables. */
    Price price() {
        return cables.stream()
                .flatMap(Optional::stream)
                .map(cable -> Price.of(cable))
                .reduce(Price.NOTHING, Price::plus);
    }

    /** Loop resistances of the feed links, Ω; 0 where the cable is missing. */
    double[] resistances(Temperature conductor) {
        return resistances(cables, conductor);
    }

    static double[] resistances(List<Optional<LaidCable>> cables, Temperature conductor) {
        return cables.stream()
                .mapToDouble(cable ->
                        cable.map(c -> Conductors.loopResistance(c, conductor)).orElse(0.0))
                .toArray();
    }
}
