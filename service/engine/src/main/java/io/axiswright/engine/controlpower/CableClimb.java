package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The search for the cables of one chain. Each link has a ladder: its long-enough cables from the cheapest up, each rung of
 * less resistance than the one below. From the lowest rungs up, the link that loses most voltage on the way to the worst
 * terminal climbs one rung until every terminal has enough, and then, on the longest way, until that is short enough; then
 * each link in turn goes back to the lowest rung that still suffices. With constant-power loads every voltage rises as any
 * resistance falls, so this fails only where the top rungs fail, that is, where no choice at all would do. With brakes the
 * same holds for what lies behind a link; that a thinner cable starves one brake and so leaves more for another is not made
 * use of.
 */
final class CableClimb {

    private final ChainNetwork network;
    private final SourceVoltages source;
    private final double mostResistance;
    private final Temperature conductor;
    private final boolean together;
    private final List<List<LaidCable>> ladders;
    private final int[] rung;
    private final ChainState lossless;
    private Optional<ChainState> state = Optional.empty();

    /**
     * A search.
     *
     * @param mostResistance of the way from the supply to any terminal, there and back, Ω
     * @param together whether all brakes pull in at the same moment
     * @param ladders of every link
     */
    CableClimb(
            ChainNetwork network,
            SourceVoltages source,
            double mostResistance,
            Temperature conductor,
            boolean together,
            List<List<LaidCable>> ladders) {
        this.network = network;
        this.source = source;
        this.mostResistance = mostResistance;
        this.conductor = conductor;
        this.together = together;
        this.ladders = ladders;
        this.rung = new int[ladders.size()];
        this.lossless = network.lossless(source, together);
    }

    ChainPlan climb() {
        if (ladders.stream().anyMatch(List::isEmpty)) {
            return plan();
        }
        boolean suffices = suffices();
        while (!suffices) {
            int link = linkToClimb();
            if (link < 0) {
                break;
            }
            rung[link]++;
            suffices = suffices();
        }
        if (suffices) {
            stepBack();
        }
        return plan();
    }

    private ChainPlan plan() {
        return new ChainPlan(network, source, cables(), state, state.orElse(lossless));
    }

    /** Works out the state with the present cables. */
    private boolean suffices() {
        double[] resistance = resistances();
        state = ChainState.of(network, loads -> network.tree(resistance, loads), source, together);
        return holds() && isShortEnough(resistance);
    }

    private boolean holds() {
        return state.map(ChainState::holds).orElse(false);
    }

    private boolean isShortEnough(double[] resistance) {
        if (Double.isInfinite(mostResistance)) {
            return true;
        }
        double[] ways = network.wayResistances(resistance);
        return ways[ChainNetwork.farthest(ways)] <= mostResistance;
    }

    /** The climbable link with the largest drop, of those on the way to the worst terminal if any; −1 if all are at the top. */
    private int linkToClimb() {
        double[] resistance = resistances();
        BitSet climbable = new BitSet();
        for (int k = 0; k < rung.length; k++) {
            climbable.set(k, rung[k] + 1 < ladders.get(k).size());
        }
        state.ifPresent(s -> {
            int end = s.holds() ? ChainNetwork.farthest(network.wayResistances(resistance)) : s.worstTerminal();
            BitSet onTheWay = network.linksTo(end);
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

    private void stepBack() {
        for (int k = 0; k < rung.length; k++) {
            int climbed = rung[k];
            rung[k] = 0;
            while (!suffices() && rung[k] < climbed) {
                rung[k]++;
            }
        }
    }

    private double[] resistances() {
        return ChainPlan.resistances(cables(), conductor);
    }

    private List<Optional<LaidCable>> cables() {
        List<Optional<LaidCable>> picked = new ArrayList<>();
        for (int k = 0; k < rung.length; k++) {
            List<LaidCable> ladder = ladders.get(k);
            picked.add(ladder.isEmpty() ? Optional.empty() : Optional.of(ladder.get(rung[k])));
        }
        return List.copyOf(picked);
    }
}
