package io.axiswright.engine.controlpower;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A chain's network with all its cables, worked out for every load case. Voltages hold at the supply's low output, currents
 * are the largest of its low and its high output.
 */
final class ChainState {

    private final ChainNetwork network;
    /** V, by terminal. */
    private final double[] steady;
    /** V, by terminal: lowest while any brake pulls in. */
    private final double[] pullIn;
    /** V, by terminal: while its own brake pulls in. */
    private final double[] release;
    /** A, by terminal: largest current of the link into it. */
    private final double[] linkCurrent;

    private double steadyCurrent;
    private double worstCurrent;
    private double lowestVoltage = Double.POSITIVE_INFINITY;
    private BitSet worstCase = new BitSet();

    private ChainState(ChainNetwork network) {
        this.network = network;
        int n = network.terminals().size();
        steady = new double[n];
        pullIn = new double[n];
        release = new double[n];
        linkCurrent = new double[n];
        Arrays.fill(pullIn, Double.POSITIVE_INFINITY);
        Arrays.fill(release, Double.POSITIVE_INFINITY);
    }

    /** The state of the network with the given trees for its load cases; none if the voltage collapses in any of them. */
    static Optional<ChainState> of(
            ChainNetwork network, Function<BitSet, FeederTree> trees, SourceVoltages source, boolean together) {
        ChainState state = new ChainState(network);
        boolean stable = state.add(new BitSet(), true, trees, source);
        List<BitSet> cases = network.pullInCases(together);
        for (int k = 0; stable && k < cases.size(); k++) {
            stable = state.add(cases.get(k), false, trees, source);
        }
        return stable ? Optional.of(state) : Optional.empty();
    }

    private boolean add(BitSet pulling, boolean isSteady, Function<BitSet, FeederTree> trees, SourceVoltages source) {
        FeederTree tree = trees.apply(pulling);
        Optional<OperatingPoint> low = tree.solve(source.low());
        Optional<OperatingPoint> high = tree.solve(source.high());
        if (low.isEmpty() || high.isEmpty()) {
            return false;
        }
        double[] voltages = low.get().voltages();
        for (int k = 0; k < voltages.length; k++) {
            if (isSteady) {
                steady[k] = voltages[k];
            } else {
                pullIn[k] = Math.min(pullIn[k], voltages[k]);
            }
            if (pulling.get(k)) {
                release[k] = voltages[k];
            }
            if (voltages[k] < lowestVoltage) {
                lowestVoltage = voltages[k];
                worstCase = pulling;
            }
            linkCurrent[k] = Math.max(
                    linkCurrent[k], Math.max(low.get().currents()[k], high.get().currents()[k]));
        }
        double current = Math.max(low.get().sourceCurrent(), high.get().sourceCurrent());
        steadyCurrent = isSteady ? current : steadyCurrent;
        worstCurrent = Math.max(worstCurrent, current);
        return true;
    }

    double steady(int terminal) {
        return steady[terminal];
    }

    /** Lowest voltage while brakes pull in; the steady one if there are none. */
    double pullIn(int terminal) {
        return Double.isInfinite(pullIn[terminal]) ? steady[terminal] : pullIn[terminal];
    }

    /** Lowest voltage its electronics see in any load case. */
    double lowest(int terminal) {
        return Math.min(steady[terminal], pullIn[terminal]);
    }

    /** Voltage while its own brake pulls in; infinite without a brake. */
    double release(int terminal) {
        return release[terminal];
    }

    /** Whether the terminal is tightest while its own brake releases. */
    boolean tightestAtRelease(int terminal) {
        Terminal t = network.terminals().get(terminal);
        return release[terminal] - t.requiredToRelease() < lowest(terminal) - t.required();
    }

    /** Least difference between voltage and need, V. */
    double margin(int terminal) {
        Terminal t = network.terminals().get(terminal);
        return Math.min(lowest(terminal) - t.required(), release[terminal] - t.requiredToRelease());
    }

    /** The terminal with the least margin. */
    int worstTerminal() {
        int worst = 0;
        for (int k = 1; k < steady.length; k++) {
            if (margin(k) < margin(worst)) {
                worst = k;
            }
        }
        return worst;
    }

    boolean holds() {
        return margin(worstTerminal()) >= 0;
    }

    /** Largest current into a gateway, A. */
    double linkCurrent(int gateway) {
        return linkCurrent[gateway];
    }

    double steadyCurrent() {
        return steadyCurrent;
    }

    double worstCurrent() {
        return worstCurrent;
    }

    /** The brakes pulling in where the voltage is lowest. */
    BitSet worstCase() {
        return worstCase;
    }
}
