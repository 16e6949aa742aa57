package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.once;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The closed forms of the trade for a single deceleration, a capacitor, a chopper and a resistor. */
class ClosedFormsTest {

    // the numbers of the reference's own check by step-by-step integration
    private static final double TORQUE = 9;
    private static final double SPEED = 2 * Math.PI * 50;
    private static final double STOP = 0.12;
    private static final double LOSS = 210;
    private static final double ALPHA = SPEED / STOP;

    private static final double C = 1.5e-3;
    private static final double V0 = 565;
    private static final double ON = 780;
    private static final double OFF = 765;
    private static final double R = 40;
    private static final double P0 = 9000;
    private static final double K = 60_000;
    private static final double TAU = R * C / 2;

    private final Bus bus = Bus.of(C, V0, 820);
    private final Chopper chopper = new Chopper(bus.energy(ON), bus.energy(OFF), 1 / TAU, 500, 450);
    private final BusState cold = new BusState(bus.floorEnergy(), false, 0);
    private final BusState on = new BusState(bus.energy(ON), true, 0);

    /** Copper loss 9²/1² = 81 W and standby loss 129 W make the constant loss of 210 W. */
    private static BusPower stop() {
        var course = BrakingFixtures.course(BrakingFixtures.stretch(STOP, SPEED, -ALPHA, -TORQUE));
        return BusPower.once(List.of(PowerCourse.withLosses(course, unit(1, 129, 1e-3, 820))));
    }

    @Test
    void powerCrossesZeroAtTheSpeedWhereLossEatsAll() {
        double speedAtZero = LOSS / TORQUE; // w_z = P_L/T_e
        List<PowerSegment> segments = stop().segments();
        assertThat(segments).hasSize(2);
        assertThat(segments.getLast().from()).isCloseTo((SPEED - speedAtZero) / ALPHA, within(1e-15));
        assertThat(segments.getFirst().sign()).isEqualTo(1);
        assertThat(segments.getLast().sign()).isEqualTo(-1);
    }

    @Test
    void returnedAndDrawnEnergyOfAStop() {
        double returned = Math.pow(TORQUE * SPEED - LOSS, 2) / (2 * TORQUE * ALPHA);
        double drawn = LOSS * LOSS / (2 * TORQUE * ALPHA);
        assertThat(stop().returned()).isCloseTo(returned, withPercentage(1e-10));
        assertThat(stop().drawn()).isCloseTo(drawn, withPercentage(1e-10));
        assertThat(stop().peak()).isCloseTo(TORQUE * SPEED - LOSS, withPercentage(1e-10));
    }

    @Test
    void returnedEnergyOfAStopWithEddyLoss() {
        double eddy = 1.5e-3;
        Polynomial speed = Polynomial.of(SPEED, -ALPHA);
        Polynomial power =
                speed.times(TORQUE).minus(speed.times(speed).times(eddy)).plus(-LOSS);
        var course = new PowerCourse(List.of(new PowerCourse.Piece(0, STOP, power)), STOP);
        double zero = 2 * LOSS / (TORQUE + Math.sqrt(TORQUE * TORQUE - 4 * eddy * LOSS));
        double returned = (TORQUE * (SPEED * SPEED - zero * zero) / 2
                        - eddy * (Math.pow(SPEED, 3) - Math.pow(zero, 3)) / 3
                        - LOSS * (SPEED - zero))
                / ALPHA;
        assertThat(BusPower.once(List.of(course)).returned()).isCloseTo(returned, withPercentage(1e-9));
    }

    /** T_e = J·α, no drive loss: at α = K_m²·w0/J copper eats all; the sum of the loss equals the power at the start. */
    @Test
    void aStopHardEnoughReturnsNothing() {
        double km = 0.8;
        double inertia = 0.01;
        double hardest = km * km * SPEED / inertia;
        assertThat(pureInertia(inertia, km, hardest * 1.0001).returned()).isZero();
        double alpha = hardest * 0.5;
        double share = 1 - inertia * alpha / (km * km * SPEED);
        assertThat(pureInertia(inertia, km, alpha).returned())
                .isCloseTo(inertia * SPEED * SPEED / 2 * share * share, withPercentage(1e-10));
    }

    private static BusPower pureInertia(double inertia, double km, double alpha) {
        var course = BrakingFixtures.course(BrakingFixtures.stretch(SPEED / alpha, SPEED, -alpha, -inertia * alpha));
        return BusPower.once(List.of(PowerCourse.withLosses(course, unit(km, 0, 1e-3, 820))));
    }

    @Test
    void capacitorUnderConstantAndFallingPower() {
        BusTrace constant = new BusSimulation(bus, Chopper.NONE).run(once(0.01, 6000), cold);
        assertThat(bus.voltage(constant.end().energy()))
                .isCloseTo(Math.sqrt(V0 * V0 + 2 * 6000 * 0.01 / C), withPercentage(1e-12));
        assertThat(constant.tripInstant()).isNaN();
        BusTrace tripping = new BusSimulation(bus, Chopper.NONE).run(once(0.1, 6000), cold);
        assertThat(tripping.tripInstant()).isCloseTo(C * (820 * 820 - V0 * V0) / (2 * 6000), within(1e-12));
        BusTrace ramp = new BusSimulation(bus, Chopper.NONE).run(once(0.03, P0, -K), cold);
        assertThat(bus.voltage(ramp.end().energy()))
                .isCloseTo(Math.sqrt(V0 * V0 + 2 / C * (P0 * 0.03 - K * 0.03 * 0.03 / 2)), withPercentage(1e-12));
    }

    @Test
    void chopperUnderConstantAndFallingPower() {
        // power above ON²/R keeps the chopper on throughout
        double strong = 20_000;
        BusTrace constant = new BusSimulation(bus, chopper).run(once(0.05, strong), on);
        double y = strong * R + (ON * ON - strong * R) * Math.exp(-0.05 / TAU);
        assertThat(bus.voltage(constant.end().energy())).isCloseTo(Math.sqrt(y), withPercentage(1e-12));
        // with the reference's own numbers and the switch-off voltage out of the way
        var never = new Chopper(bus.energy(ON), bus.energy(300), 1 / TAU, 500, 450);
        BusTrace ramp = new BusSimulation(Bus.of(C, 100, 820), never).run(once(0.03, P0, -K), on);
        double falling = R * (P0 - K * 0.03 + K * TAU) + (ON * ON - R * (P0 + K * TAU)) * Math.exp(-0.03 / TAU);
        assertThat(bus.voltage(ramp.end().energy())).isCloseTo(Math.sqrt(falling), withPercentage(1e-12));
    }

    /** Power that first rises faster than the resistor follows: the turning point lies inside the piece. */
    @Test
    void peakWhileTheChopperConducts() {
        double start = 40_000;
        double slope = 1e6;
        BusTrace trace = new BusSimulation(bus, chopper).run(once(0.04, start, -slope), on);
        // y' = 0: R·p(t) = y(t); solved here by bisection on the closed form
        double low = 0;
        double high = 0.04;
        while (high - low > 1e-15) {
            double t = (low + high) / 2;
            if (R * (start - slope * t) > ramp(start, slope, t)) {
                low = t;
            } else {
                high = t;
            }
        }
        assertThat(trace.peakInstant()).isCloseTo(low, within(1e-9));
        assertThat(bus.voltage(trace.peakEnergy()))
                .isCloseTo(Math.sqrt(ramp(start, slope, low)), withPercentage(1e-12));
        double trip = trace.tripInstant();
        assertThat(Math.sqrt(ramp(start, slope, trip))).isCloseTo(820, within(1e-9));
    }

    private static double ramp(double start, double slope, double t) {
        return R * (start - slope * t + slope * TAU) + (ON * ON - R * (start + slope * TAU)) * Math.exp(-t / TAU);
    }

    @Test
    void onTimeOffTimeAndDutyUnderConstantPower() {
        double power = 6000;
        double onTime = TAU * Math.log((ON * ON - power * R) / (OFF * OFF - power * R));
        double offTime = C * (ON * ON - OFF * OFF) / (2 * power);
        var simulation = new BusSimulation(bus, chopper);
        assertThat(simulation.run(once(onTime * (1 - 1e-9), power), on).end().chopping())
                .isTrue();
        assertThat(simulation.run(once(onTime * (1 + 1e-9), power), on).end().chopping())
                .isFalse();
        double period = onTime + offTime;
        assertThat(simulation.run(once(period * (1 - 1e-9), power), on).switchings())
                .isZero();
        assertThat(simulation.run(once(period * (1 + 1e-9), power), on).switchings())
                .isOne();
        // the reference's step-by-step check prints a duty of 0.4022 both ways
        assertThat(onTime / period).isCloseTo(0.4022, within(5e-5));
        double middle = (ON + OFF) / 2;
        assertThat(power * R / (middle * middle)).isCloseTo(0.4022, within(5e-5));
        // what is burned in many whole switchings is what was returned
        BusTrace many = simulation.run(once(1000 * period, power), on);
        assertThat(many.switchings()).isBetween(999L, 1000L);
        assertThat(many.burned()).isCloseTo(power * 1000 * period, withPercentage(1e-6));
    }

    /** Peak rise in the periodic state is (E/(m·c))/(1 − e^(−t_c/τ)); E 900 J, m·c 500 J/K, R_th 0.9 K/W, t_c 4 s. */
    @Test
    void resistorInPeriodicSteadyState() {
        // a bus almost without capacitance passes a pulse of 900 J straight to the resistor, and the pause draws it to
        // the floor
        Bus small = Bus.of(1e-7, V0, 2000);
        var wide = new Chopper(small.energy(ON), small.energy(OFF), 2 / (R * 1e-7), 500, 500 * 0.9);
        PowerCourse pulse = BrakingFixtures.powers(new double[] {0.1, 3.9}, new double[] {9000}, new double[] {-5});
        CycleOutcome cycle = CommonPeriod.load(List.of(pulse)).on(small, wide);
        assertThat(cycle.basis()).isEqualTo(CycleBasis.PERIODIC);
        assertThat(cycle.outcome().burned()).isCloseTo(900, withPercentage(0.01));
        double peak = 900.0 / 500 / (1 - Math.exp(-4 / 450.0));
        assertThat(cycle.outcome().peakRise()).isCloseTo(peak, withPercentage(0.03));
        // and the long-run mean P_av·R_th lies below it by about half a ripple
        assertThat(cycle.outcome().peakRise()).isBetween(900.0 / 4 * 0.9, 900.0 / 4 * 0.9 + 900.0 / 500);
    }
}
