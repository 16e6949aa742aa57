package io.axiswright.engine.controlpower;

import java.util.Arrays;
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
    /** V, by terminal: while the electronics start. */
    private final double[] startUp;
    /** V, by terminal: while its own brake pulls in. */
    private final double[] release;
    /** A, by terminal: largest current of the link into it. */
    private final double[] linkCurrent;

    private double steadyCurrent;
    private double releaseCurrent;
    private double startUpCurrent;
    private double lowestVoltage = Double.POSITIVE_INFINITY;
    private LoadCase worstCase = LoadCase.of(ControlMode.OUTPUTS_ON);

    private ChainState(ChainNetwork network) {
        this.network = network;
        int n = network.terminals().size();
        steady = new double[n];
        pullIn = new double[n];
        startUp = new double[n];
        release = new double[n];
        linkCurrent = new double[n];
        Arrays.fill(pullIn, Double.POSITIVE_INFINITY);
        Arrays.fill(startUp, Double.POSITIVE_INFINITY);
        Arrays.fill(release, Double.POSITIVE_INFINITY);
    }

    /** The state of the network with the given trees for its load cases; none if the voltage collapses in any of them. */
    static Optional<ChainState> of(
            ChainNetwork network, Function<LoadCase, FeederTree> trees, SourceVoltages source, boolean together) {
        ChainState state = new ChainState(network);
        boolean stable = true;
        List<LoadCase> cases = network.judgedCases(together);
        for (int k = 0; stable && k < cases.size(); k++) {
            stable = state.add(cases.get(k), trees.apply(cases.get(k)), source);
        }
        return stable ? Optional.of(state) : Optional.empty();
    }

    private boolean add(LoadCase loads, FeederTree tree, SourceVoltages source) {
        Optional<OperatingPoint> low = tree.solve(source.low());
        Optional<OperatingPoint> high = tree.solve(source.high());
        if (low.isEmpty() || high.isEmpty()) {
            return false;
        }
        double[] voltages = low.get().voltages();
        for (int k = 0; k < voltages.length; k++) {
            switch (loads.mode()) {
                case START_UP -> startUp[k] = voltages[k];
                case BRAKES_TOGETHER, BRAKES_STAGGERED -> pullIn[k] = Math.min(pullIn[k], voltages[k]);
                default -> steady[k] = voltages[k];
            }
            if (loads.pullingIn().get(k)) {
                release[k] = voltages[k];
            }
            if (voltages[k] < lowestVoltage) {
                lowestVoltage = voltages[k];
                worstCase = loads;
            }
            linkCurrent[k] = Math.max(
                    linkCurrent[k], Math.max(low.get().currents()[k], high.get().currents()[k]));
        }
        double current = Math.max(low.get().sourceCurrent(), high.get().sourceCurrent());
        switch (loads.mode()) {
            case START_UP -> startUpCurrent = current;
            case BRAKES_TOGETHER, BRAKES_STAGGERED -> releaseCurrent = Math.max(releaseCurrent, current);
            default -> steadyCurrent = current;
        }
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
        return Math.min(steady[terminal], Math.min(pullIn[terminal], startUp[terminal]));
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

    /** Largest current while brakes pull in, or the steady one if that is larger, A. */
    double releaseCurrent() {
        return Math.max(steadyCurrent, releaseCurrent);
    }

    /** Current while the electronics start, A; 0 if that takes no more than their power. */
    double startUpCurrent() {
        return startUpCurrent;
    }

    double worstCurrent() {
        return Math.max(releaseCurrent(), startUpCurrent);
    }

    /** The loads with which the voltage is lowest. */
    LoadCase worstCase() {
        return worstCase;
    }
}
