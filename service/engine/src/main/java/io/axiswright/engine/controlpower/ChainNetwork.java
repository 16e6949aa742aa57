package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * The 24 V network of one chain: its gateways in order away from the supply, then the axes on their spurs. The cables of
 * the feed links are open; spurs are given. An axis whose spur has no 24 V conductors is left out.
 */
final class ChainNetwork {

    private final String chain;
    private final List<ControlNode> gateways = new ArrayList<>();
    private final List<Terminal> terminals = new ArrayList<>();
    private final int[] parent;
    private final double[] spurResistance;

    ChainNetwork(String chain, List<ControlNode> nodes, Temperature conductor) {
        this.chain = chain;
        Map<String, Integer> place = new HashMap<>();
        List<ControlNode> waiting = new ArrayList<>(nodes);
        while (!waiting.isEmpty()) {
            // upstream references are known to be whole and free of circles, so each pass places at least one
            for (ControlNode node : List.copyOf(waiting)) {
                if (node.upstream() == null || place.containsKey(node.upstream())) {
                    place.put(node.id(), gateways.size());
                    gateways.add(node);
                    waiting.remove(node);
                }
            }
        }
        List<Integer> above = new ArrayList<>();
        for (ControlNode node : gateways) {
            terminals.add(Terminal.of(node));
            above.add(node.upstream() == null ? -1 : Objects.requireNonNull(place.get(node.upstream())));
        }
        List<Double> spurs = new ArrayList<>();
        for (int g = 0; g < gateways.size(); g++) {
            for (ControlLoad load : gateways.get(g).loads()) {
                if (load.spur().powerConductor() != null) {
                    terminals.add(Terminal.of(load));
                    above.add(g);
                    spurs.add(Conductors.loopResistance(load.spur(), conductor));
                }
            }
        }
        parent = above.stream().mapToInt(Integer::intValue).toArray();
        spurResistance = spurs.stream().mapToDouble(Double::doubleValue).toArray();
    }

    String chain() {
        return chain;
    }

    /** Its gateways; a feed link has the index of the gateway it feeds. */
    List<ControlNode> gateways() {
        return gateways;
    }

    /** Every point of the network: the gateways first, in the same order. */
    List<Terminal> terminals() {
        return terminals;
    }

    /** The feed links from the supply to a terminal. */
    BitSet linksTo(int terminal) {
        BitSet links = new BitSet();
        for (int k = terminal; k >= 0; k = parent[k]) {
            if (k < gateways.size()) {
                links.set(k);
            }
        }
        return links;
    }

    /** The sets of brakes that may pull in at the same moment, as terminal indices; none without brakes. */
    List<BitSet> pullInCases(boolean together) {
        List<BitSet> single = IntStream.range(0, terminals.size())
                .filter(k -> terminals.get(k).hasBrake())
                .mapToObj(ChainNetwork::only)
                .toList();
        if (!together || single.isEmpty()) {
            return single;
        }
        BitSet all = new BitSet();
        single.forEach(all::or);
        return List.of(all);
    }

    /** The network with the given resistance of every feed link, the given brakes pulling in and all others held. */
    FeederTree tree(double[] linkResistance, BitSet pullingIn) {
        double[] resistance = new double[terminals.size()];
        System.arraycopy(linkResistance, 0, resistance, 0, gateways.size());
        System.arraycopy(spurResistance, 0, resistance, gateways.size(), spurResistance.length);
        return tree(resistance, loads(pullingIn));
    }

    /** The network as if its conductors had no resistance, spurs included. */
    ChainState lossless(SourceVoltages source, boolean together) {
        return ChainState.of(this, pulling -> tree(new double[terminals.size()], loads(pulling)), source, together)
                .orElseThrow(() -> new IllegalStateException("a network without resistance cannot collapse"));
    }

    private FeederTree tree(double[] resistance, double[] conductance) {
        double[] power = terminals.stream().mapToDouble(Terminal::power).toArray();
        return new FeederTree(parent, resistance, power, conductance);
    }

    private double[] loads(BitSet pullingIn) {
        return IntStream.range(0, terminals.size())
                .mapToDouble(k -> pullingIn.get(k)
                        ? terminals.get(k).pullInConductance()
                        : terminals.get(k).holdConductance())
                .toArray();
    }

    private static BitSet only(int index) {
        BitSet set = new BitSet();
        set.set(index);
        return set;
    }
}
