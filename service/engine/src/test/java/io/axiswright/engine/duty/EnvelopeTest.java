package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The worst instant under a torque–speed curve against brute force. */
class EnvelopeTest {

    @ParameterizedTest
    @ValueSource(longs = {61, 62})
    void noInstantUsesMoreOfTheCurve(long seed) {
        RandomAxes random = new RandomAxes(seed);
        for (int n = 0; n < 40; n++) {
            Axis axis = random.next("seed " + seed + " axis " + n);
            AxisLoad load = AxisLoad.of(axis);
            double top = 1.05 * LoadSums.of(load.pieces(), load.period()).peakSpeed() + 1;
            double corner = random.between(0.1, 0.6) * top;
            double knee = random.between(0.65, 0.95) * top;
            double[] torques = {3, random.between(2, 3.5), random.between(1, 2), 0.5};
            TorqueCurve curve = TorqueCurve.of(
                    List.of(
                            Fixtures.point(0, torques[0]),
                            Fixtures.point(corner, torques[1]),
                            Fixtures.point(knee, torques[2]),
                            Fixtures.point(top, torques[3])),
                    1);
            Envelope worst = Envelope.worst(load.pieces(), 2e-4, curve);
            double sampled = 0;
            TorqueOracle oracle = new TorqueOracle(axis, 2e-4);
            for (int k = 0; k < 20_000; k++) {
                TorqueOracle.State state = oracle.at(load.period() * k / 20_000);
                sampled = Math.max(sampled, Math.abs(state.torque()) / line(curve(corner, knee, top, torques), state));
            }
            assertThat(worst.use()).as(axis.id()).isGreaterThanOrEqualTo(sampled * (1 - 1e-9));
            double near = Math.min(worst.instant(), load.period() - 2e-9);
            double there = Math.max(
                    use(oracle.at(Math.max(0, near - 1e-9)), curve(corner, knee, top, torques)),
                    use(oracle.at(near + 1e-9), curve(corner, knee, top, torques)));
            assertThat(worst.use()).as(axis.id()).isCloseTo(there, within(1e-5 * there));
        }
    }

    private static double[][] curve(double corner, double knee, double top, double[] torques) {
        return new double[][] {{0, torques[0]}, {corner, torques[1]}, {knee, torques[2]}, {top, torques[3]}};
    }

    private static double use(TorqueOracle.State state, double[][] curve) {
        return Math.abs(state.torque()) / line(curve, state);
    }

    private static double line(double[][] curve, TorqueOracle.State state) {
        double speed = Math.abs(state.speed());
        int k = 1;
        while (curve[k][0] < speed) {
            k++;
        }
        double share = (speed - curve[k - 1][0]) / (curve[k][0] - curve[k - 1][0]);
        return curve[k - 1][1] + share * (curve[k][1] - curve[k - 1][1]);
    }
}
