package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Temperature;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A cabled chain in one mode.
 *
 * @param mode the mode
 * @param voltages V, by terminal: the lowest in any of its cases, from the supply's low output
 * @param current A, the largest in any of its cases, from its low or its high output
 */
record ModeState(ControlMode mode, double[] voltages, double current) {

    /** The state in that mode; none if the voltage collapses, or the mode has no case. */
    static Optional<ModeState> of(ChainPlan plan, ControlMode mode, Temperature conductor) {
        return of(plan, mode, conductor, plan.source());
    }

    /** The same with the source elsewhere. */
    static Optional<ModeState> of(ChainPlan plan, ControlMode mode, Temperature conductor, SourceVoltages source) {
        List<LoadCase> cases = plan.network().cases(mode);
        double[] lowest = new double[plan.network().terminals().size()];
        Arrays.fill(lowest, Double.POSITIVE_INFINITY);
        double[] resistances = plan.resistances(conductor);
        double current = 0;
        for (LoadCase loads : cases) {
            FeederTree tree = plan.network().tree(resistances, loads);
            Optional<OperatingPoint> low = tree.solve(source.low());
            Optional<OperatingPoint> high = source.isOne() ? low : tree.solve(source.high());
            if (low.isEmpty() || high.isEmpty()) {
                return Optional.empty();
            }
            Arrays.setAll(lowest, k -> Math.min(lowest[k], low.get().voltages()[k]));
            current = Math.max(
                    current, Math.max(low.get().sourceCurrent(), high.get().sourceCurrent()));
        }
        return cases.isEmpty() ? Optional.empty() : Optional.of(new ModeState(mode, lowest, current));
    }
}
