package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Picks the cable of every feed link of a chain. Each link has a ladder: its long-enough cables from the cheapest up, each
 * rung of less resistance than the one below. From the lowest rungs up, the link that loses most voltage on the way to the
 * worst terminal climbs one rung until every terminal has enough; then each link in turn goes back to the lowest rung that
 * still suffices. With constant-power loads every voltage rises as any resistance falls, so this fails only where the top
 * rungs fail, that is, where no choice at all would do. With brakes the same holds for what lies behind a link; that a
 * thinner cable starves one brake and so leaves more for another is not made use of.
 */
final class CablePicker {

    private static final Comparator<CableAssembly> CHEAPEST = Comparator.comparing(
                    (CableAssembly cable) -> Price.of(cable))
            .thenComparing(cable -> cable.length().si())
            .thenComparing(CableAssembly::id);

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

    ChainPlan pick(ChainNetwork network, SourceVoltages source) {
        List<List<CableAssembly>> ladders = network.gateways().stream()
                .map(node -> ladder(node.feedLength()))
                .toList();
        int[] rung = new int[ladders.size()];
        ChainState lossless = network.lossless(source, together);
        if (ladders.stream().anyMatch(List::isEmpty)) {
            return new ChainPlan(network, source, at(ladders, rung), Optional.empty(), lossless);
        }
        Optional<ChainState> state = state(network, source, ladders, rung);
        while (!holds(state)) {
            int link = linkToClimb(network, ladders, rung, state, lossless);
            if (link < 0) {
                break;
            }
            rung[link]++;
            state = state(network, source, ladders, rung);
        }
        if (holds(state)) {
            stepBack(network, source, ladders, rung);
            state = state(network, source, ladders, rung);
        }
        return new ChainPlan(network, source, at(ladders, rung), state, state.orElse(lossless));
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

    /** The climbable link with the largest drop, of those on the way to the worst terminal if any; −1 if all are at the top. */
    private int linkToClimb(
            ChainNetwork network,
            List<List<CableAssembly>> ladders,
            int[] rung,
            Optional<ChainState> state,
            ChainState lossless) {
        double[] resistance = ChainPlan.resistances(at(ladders, rung), conductor);
        BitSet climbable = new BitSet();
        for (int k = 0; k < rung.length; k++) {
            climbable.set(k, rung[k] + 1 < ladders.get(k).size());
        }
        state.ifPresent(s -> {
            BitSet onTheWay = network.linksTo(s.worstTerminal());
            if (onTheWay.intersects(climbable)) {
                climbable.and(onTheWay);
            }
        });
        ChainState currents = state.orElse(lossless);
        return climbable.stream()
                .boxed()
                .max(Comparator.comparingDouble((Integer k) -> currents.linkCurrent(k) * resistance[k])
                        .thenComparing(Comparator.reverseOrder()))
                .orElse(-1);
    }

    private void stepBack(ChainNetwork network, SourceVoltages source, List<List<CableAssembly>> ladders, int[] rung) {
        for (int k = 0; k < rung.length; k++) {
            int climbed = rung[k];
            rung[k] = 0;
            while (rung[k] < climbed && !holds(state(network, source, ladders, rung))) {
                rung[k]++;
            }
        }
    }

    private Optional<ChainState> state(
            ChainNetwork network, SourceVoltages source, List<List<CableAssembly>> ladders, int[] rung) {
        double[] resistance = ChainPlan.resistances(at(ladders, rung), conductor);
        return ChainState.of(network, loads -> network.tree(resistance, loads), source, together);
    }

    private static boolean holds(Optional<ChainState> state) {
        return state.map(ChainState::holds).orElse(false);
    }

    private static List<Optional<CableAssembly>> at(List<List<CableAssembly>> ladders, int[] rung) {
        List<Optional<CableAssembly>> picked = new ArrayList<>();
        for (int k = 0; k < rung.length; k++) {
            List<CableAssembly> ladder = ladders.get(k);
            picked.add(ladder.isEmpty() ? Optional.empty() : Optional.of(ladder.get(rung[k])));
        }
        return List.copyOf(picked);
    }
}
