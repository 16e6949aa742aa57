package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Resistance;
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
 * the feed links are open; spurs and the cables of field devices are given. An axis whose spur has no 24 V conductors is
 * left out.
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
            for (FieldLoad load : gateways.get(g).devices()) {
                Resistance cable = load.device().cableResistance();
                terminals.add(Terminal.of(load));
                above.add(g);
                spurs.add(cable == null ? 0 : cable.si());
            }
        }
        parent = above.stream().mapToInt(Integer::intValue).toArray();
        spurResistance = spurs.stream().mapToDouble(Double::doubleValue).toArray();
    }

    String chain() {
        return chain;
    }

    /** Whether its gateways are fed one from the other in a row. */
    boolean isRow() {
        return IntStream.range(1, gateways.size())
                .allMatch(k -> gateways.get(k - 1).id().equals(gateways.get(k).upstream()));
    }

    /** Some gateways of a row, the first of them fed straight from the supply. */
    ChainNetwork part(int from, int to, Temperature conductor) {
        List<ControlNode> nodes = new ArrayList<>(gateways.subList(from, to));
        nodes.set(0, from == 0 ? nodes.getFirst() : nodes.getFirst().fedDirectly());
        return new ChainNetwork(chain, nodes, conductor);
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

    /** The load cases of a mode; none of pulling brakes in if there are no brakes. */
    List<LoadCase> cases(ControlMode mode) {
        int[] brakes = IntStream.range(0, terminals.size())
                .filter(k -> terminals.get(k).hasBrake())
                .toArray();
        return switch (mode) {
            case STANDBY, START_UP, RUNNING, OUTPUTS_ON -> List.of(LoadCase.of(mode));
            case BRAKES_TOGETHER -> brakes.length == 0 ? List.of() : List.of(new LoadCase(mode, set(brakes)));
            case BRAKES_STAGGERED ->
                IntStream.of(brakes)
                        .mapToObj(brake -> new LoadCase(mode, set(brake)))
                        .toList();
        };
    }

    /** The cases the chain is judged by: outputs on, brakes pulling in as they may, and starting if that takes more. */
    List<LoadCase> judgedCases(boolean together) {
        List<LoadCase> cases = new ArrayList<>(cases(ControlMode.OUTPUTS_ON));
        if (terminals.stream().anyMatch(Terminal::hasInrush)) {
            cases.addAll(cases(ControlMode.START_UP));
        }
        cases.addAll(cases(together ? ControlMode.BRAKES_TOGETHER : ControlMode.BRAKES_STAGGERED));
        return cases;
    }

    /** The network with the given resistance of every feed link and the loads of a case. */
    FeederTree tree(double[] linkResistance, LoadCase loads) {
        return new FeederTree(parent, resistances(linkResistance), draws(loads));
    }

    /** Resistance of the whole way from the supply to every terminal, there and back, Ω. */
    double[] wayResistances(double[] linkResistance) {
        double[] way = resistances(linkResistance);
        for (int k = 0; k < way.length; k++) {
            way[k] += parent[k] < 0 ? 0 : way[parent[k]];
        }
        return way;
    }

    /** The terminal with the longest of these ways; of equals the first. */
    static int farthest(double[] ways) {
        return IntStream.range(0, ways.length)
                .reduce((best, k) -> ways[k] > ways[best] ? k : best)
                .orElseThrow();
    }

    /** Whether a terminal is a given one or fed through it. */
    boolean isBehind(int terminal, int other) {
        int k = terminal;
        while (k > other) {
            k = parent[k];
        }
        return k == other;
    }

    private double[] resistances(double[] linkResistance) {
        double[] resistance = new double[terminals.size()];
        System.arraycopy(linkResistance, 0, resistance, 0, gateways.size());
        System.arraycopy(spurResistance, 0, resistance, gateways.size(), spurResistance.length);
        return resistance;
    }

    /** The network as if its conductors had no resistance, spurs included. */
    ChainState lossless(SourceVoltages source, boolean together) {
        double[] none = new double[terminals.size()];
        return ChainState.of(this, loads -> new FeederTree(parent, none, draws(loads)), source, together)
                .orElseThrow(() -> new IllegalStateException("a network without resistance cannot collapse"));
    }

    private List<Draw> draws(LoadCase loads) {
        return IntStream.range(0, terminals.size())
                .mapToObj(k ->
                        terminals.get(k).draw(loads.mode(), loads.pullingIn().get(k)))
                .toList();
    }

    private static BitSet set(int... indices) {
        BitSet set = new BitSet();
        IntStream.of(indices).forEach(set::set);
        return set;
    }
}
