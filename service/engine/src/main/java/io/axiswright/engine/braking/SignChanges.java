package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.Polynomial;
import java.util.Arrays;
import java.util.List;

/** Where a power or its slope changes sign. Straight lines, by far the most, are solved without the general search. */
final class SignChanges {

    private static final double[] NONE = {};

    private SignChanges() {}

    /** The local times strictly inside (0, duration) at which the power or its slope changes sign, ascending. */
    static double[] ofPowerAndSlope(double[] power, double duration) {
        return switch (power.length) {
            case 1 -> NONE;
            case 2 -> ofLine(power, duration);
            default -> ofCurve(power, duration);
        };
    }

    private static double[] ofLine(double[] power, double duration) {
        double crossing = -power[0] / power[1];
        return crossing > 0 && crossing < duration ? new double[] {crossing} : NONE;
    }

    private static double[] ofCurve(double[] power, double duration) {
        Polynomial p = Polynomial.of(power);
        List<Double> turns = p.derivative().signChanges(0, duration);
        List<Double> zeros = p.signChanges(0, duration);
        double[] all = new double[turns.size() + zeros.size()];
        int count = 0;
        for (double turn : turns) {
            all[count++] = turn;
        }
        for (double zero : zeros) {
            all[count++] = zero;
        }
        Arrays.sort(all);
        return all;
    }
}
