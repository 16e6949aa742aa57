package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HousingHeat;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Heating of the winding against textbook cases and a general-purpose integrator. */
class WindingHeatTest {

    private static final LoadEffort NONE = new EvenEffort(1, 0, 0, 0, 0, 0, 0);

    private static LoadPiece loss(double start, double duration, double steadyRise) {
        Polynomial torque = Polynomial.of(Math.sqrt(steadyRise));
        return LoadPiece.of(
                start, duration, Polynomial.ZERO, Polynomial.ZERO, Polynomial.ZERO, torque, Polynomial.ZERO, NONE);
    }

    /**
     * Dubey, Fundamentals of Electrical Drives, ex. 4.1, p. 47: 10 s loaded, 20 s idle, tau 60 s, lowest rise 40, idle steady
     * rise 15; printed highest 49.9, loaded steady 104.4 (49.8903 and 104.424 unrounded).
     */
    @Test
    void clutchedLoad() {
        WindingHeat heat =
                WindingHeat.highest(List.of(loss(0, 10, 104.424), loss(10, 20, 15)), 0, 1, HeatPath.single(60));
        assertThat(heat.rise()).isCloseTo(49.8903, withinPercentage(0.1));
        assertThat(heat.instant()).isEqualTo(10);
        assertThat(Decay.after(heat.rise(), Polynomial.of(15), 20, 60)).isCloseTo(40, withinPercentage(0.1));
    }

    /** Dubey ex. 4.4, p. 55: 20 kW for ever; tau 60 min: 51.0 kW for 10 min from cold; with 90 min at rest 25.14 kW by turns. */
    @Test
    void overloadByCopperLossAlone() {
        double once = 51.0446 / 20;
        double turns = 25.1384 / 20;
        assertThat(Decay.after(0, Polynomial.of(once * once), 10, 60)).isCloseTo(1, withinPercentage(0.1));
        double rested = Decay.after(1, Polynomial.ZERO, 10, 90);
        assertThat(Decay.after(rested, Polynomial.of(turns * turns), 10, 60)).isCloseTo(1, withinPercentage(0.1));
    }

    /** Pillai, A First Course on Electrical Drives, ex. 7.4, p. 157: 100 kW, tau 90 min loaded, 120 at rest, 18 on / 30 off. */
    @Test
    void intermittentRating() {
        double load = 141.389 / 100;
        double rested = Decay.after(1, Polynomial.ZERO, 30, 120);
        assertThat(Decay.after(rested, Polynomial.of(load * load), 18, 90)).isCloseTo(1, withinPercentage(0.1));
    }

    /** Dubey ex. 4.4, p. 55, the other way round: 51.0446 kW on a 20 kW motor with tau 60 min reach the limit after 10 min. */
    @Test
    void timeUntilTheLimitFromCold() {
        double overload = 51.0446 / 20;
        assertThat(HeatPath.single(60).timeTo(1, overload * overload)).isCloseTo(10, withinPercentage(0.1));
        assertThat(HeatPath.single(60).timeTo(1, 1)).isInfinite();
        HeatPath two = new HeatPath(List.of(new HeatPath.Body(0.7, 30), new HeatPath.Body(0.3, 1800)));
        double time = two.timeTo(1, 2);
        double rise = 2 * (0.7 * (1 - Math.exp(-time / 30)) + 0.3 * (1 - Math.exp(-time / 1800)));
        assertThat(rise).isCloseTo(1, within(1e-12));
    }

    /** Winding over housing over ambient, integrated as two equations, from the state that repeats. */
    @Test
    void twoBodiesAgreeWithAGeneralPurposeIntegrator() {
        RandomAxes random = new RandomAxes(52);
        double[] share = {0.6, 0.4};
        double[] tau = {1.5, 200};
        HeatPath path = new HeatPath(List.of(new HeatPath.Body(0.6, 1.5), new HeatPath.Body(0.4, 200)));
        for (int n = 0; n < 12; n++) {
            Axis axis = random.next("seed 52 axis " + n);
            AxisLoad load = AxisLoad.of(axis);
            Course course = load.course(2e-4);
            double[] start = new double[2];
            double[] end = run(course, start, share, tau)[0];
            for (int k = 0; k < 2; k++) {
                start[k] = end[k] / -Math.expm1(-load.period() / tau[k]);
            }
            double highest = run(course, start, share, tau)[1][0];
            assertThat(WindingHeat.highest(load.pieces(), 2e-4, 1, path).rise())
                    .as(axis.id())
                    .isCloseTo(highest, within(1e-6 * highest + 1e-12));
            double rms = LoadSums.of(load.pieces(), load.period()).rmsTorque(2e-4);
            assertThat(path.bound(rms * rms, load.period())).as(axis.id()).isGreaterThanOrEqualTo(highest * (1 - 1e-9));
        }
    }

    /** What is printed beside the results of a motor with a housing leads to them, and only the formulas of two bodies do. */
    @Test
    void theDerivationsOfTwoBodiesReproduceTheirResults() {
        DriveUnit unit = Fixtures.with(Fixtures.unit("u", 2, 100), 100, new HousingHeat(0.3, new Time(1800)), null);
        Axis axis = Fixtures.axis(
                "a",
                Fixtures.table(0.01, 1, 1),
                null,
                Fixtures.ANY,
                Fixtures.turn(20, 0.4, new Trapezoidal(0.25, 0.25)),
                Fixtures.dwell(0.1));
        DutyResult result = new DutySizing().size(Fixtures.request(List.of(axis), List.of(unit)));
        Map<String, Derivation> bySymbol =
                result.derivations().stream().collect(Collectors.toMap(Derivation::symbol, one -> one));
        Derivation peak = Objects.requireNonNull(bySymbol.get("t_peak"));
        double s = printed(peak, "s");
        double time = peak.result().si();
        assertThat(printed(peak, "rise")
                        * Math.pow(printed(peak, "T_peak") / printed(peak, "T_c(w_rms)"), 2)
                        * ((1 - s) * (1 - Math.exp(-time / printed(peak, "tau_w")))
                                + s * (1 - Math.exp(-time / printed(peak, "tau_h")))))
                .isCloseTo(printed(peak, "theta_permitted"), within(1e-9));
        Derivation hottest = Objects.requireNonNull(bySymbol.get("theta_max"));
        double[] share = {1 - printed(hottest, "s"), printed(hottest, "s")};
        double[] tau = {printed(hottest, "tau_w"), printed(hottest, "tau_h")};
        Course course = result.axes().getFirst().course();
        double[] start = run(course, new double[2], share, tau)[0];
        for (int body = 0; body < 2; body++) {
            start[body] /= -Math.expm1(-printed(hottest, "t_cycle") / tau[body]);
        }
        double squared = run(course, start, share, tau)[1][0];
        assertThat(squared * printed(hottest, "rise") / Math.pow(printed(hottest, "T_c(w_rms)"), 2))
                .isCloseTo(hottest.result().si(), within(1e-6 * hottest.result().si()));
    }

    private static double printed(Derivation derivation, String symbol) {
        return Objects.requireNonNull(derivation.inputs().get(symbol)).si();
    }

    /** The rises at the end of the cycle, and the highest sum on the way. */
    private static double[][] run(Course course, double[] start, double[] share, double[] tau) {
        double[] state = start.clone();
        double[] top = {start[0] + start[1]};
        for (Course.Piece piece : course.pieces()) {
            var integrator =
                    new DormandPrince853Integrator(1e-9 * piece.duration(), piece.duration() / 200, 1e-14, 1e-12);
            integrator.addStepHandler(step -> {
                double from = step.getPreviousState().getTime();
                double to = step.getCurrentState().getTime();
                for (int k = 1; k <= 10; k++) {
                    double[] y = step.getInterpolatedState(from + (to - from) * k / 10)
                            .getPrimaryState();
                    top[0] = Math.max(top[0], y[0] + y[1]);
                }
            });
            Polynomial torque = piece.torque();
            state = integrator
                    .integrate(
                            new OrdinaryDifferentialEquation() {
                                @Override
                                public int getDimension() {
                                    return 2;
                                }

                                @Override
                                public double[] computeDerivatives(double t, double[] y) {
                                    double loss = torque.at(t) * torque.at(t);
                                    return new double[] {
                                        (share[0] * loss - y[0]) / tau[0], (share[1] * loss - y[1]) / tau[1]
                                    };
                                }
                            },
                            new ODEState(0, state),
                            piece.duration())
                    .getPrimaryState();
        }
        return new double[][] {state, top};
    }

    /** A burst of 20 s at three times the torque against tau 40 s reaches 39 % of nine times the rise (derived: 1 − e^(−0.5)). */
    @Test
    void longBurstOverheatsAtAFairRms() {
        WindingHeat heat = WindingHeat.highest(List.of(loss(0, 20, 9), loss(20, 580, 0)), 0, 1, HeatPath.single(40));
        assertThat(Math.sqrt(9 * 20 / 600.0)).isLessThan(1);
        assertThat(heat.rise()).isCloseTo(9 * (1 - Math.exp(-0.5)), within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 60, 3000})
    void agreesWithAGeneralPurposeIntegrator(double tau) {
        RandomAxes random = new RandomAxes(51);
        for (int n = 0; n < 12; n++) {
            Axis axis = random.next("seed 51 axis " + n + " tau " + tau);
            AxisLoad load = AxisLoad.of(axis);
            double inertia = 2e-4;
            Course course = load.course(inertia);
            double start = run(course, 0, tau, true) / -Math.expm1(-load.period() / tau);
            double highest = run(course, start, tau, false);
            assertThat(WindingHeat.highest(load.pieces(), inertia, 1, HeatPath.single(tau))
                            .rise())
                    .as(axis.id())
                    .isCloseTo(highest, within(1e-6 * highest + 1e-12));
            double rms = LoadSums.of(load.pieces(), load.period()).rmsTorque(inertia);
            assertThat(HeatPath.single(tau).bound(rms * rms, load.period()))
                    .as(axis.id())
                    .isGreaterThanOrEqualTo(highest * (1 - 1e-9));
        }
    }

    /** The rise at the end of the cycle, or the highest on the way. */
    private static double run(Course course, double start, double tau, boolean end) {
        double state = start;
        double highest = start;
        for (Course.Piece piece : course.pieces()) {
            var integrator = new DormandPrince853Integrator(1e-13, piece.duration() / 200, 1e-14, 1e-12);
            double[] top = {highest};
            integrator.addStepHandler(step -> {
                double from = step.getPreviousState().getTime();
                double to = step.getCurrentState().getTime();
                for (int k = 1; k <= 10; k++) {
                    top[0] = Math.max(
                            top[0],
                            step.getInterpolatedState(from + (to - from) * k / 10)
                                    .getPrimaryState()[0]);
                }
            });
            Polynomial torque = piece.torque();
            state = integrator.integrate(
                            new OrdinaryDifferentialEquation() {
                                @Override
                                public int getDimension() {
                                    return 1;
                                }

                                @Override
                                public double[] computeDerivatives(double t, double[] y) {
                                    double value = torque.at(t);
                                    return new double[] {(value * value - y[0]) / tau};
                                }
                            },
                            new ODEState(0, new double[] {state}),
                            piece.duration())
                    .getPrimaryState()[0];
            highest = Math.max(top[0], state);
        }
        return end ? state : highest;
    }
}
