package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.assertj.core.api.Assertions;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole cycles against an instant-by-instant model and adaptive quadrature. */
class CourseTest {

    private static final double INERTIA = 3e-4;

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void rmsSpeedAndEnergyAgreeWithQuadrature(long seed) {
        RandomAxes random = new RandomAxes(seed);
        for (int n = 0; n < 50; n++) {
            agreesWithQuadrature(random.next("seed " + seed + " axis " + n));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54})
    void unevenMechanismsAgreeWithQuadrature(long seed) {
        RandomAxes random = new RandomAxes(seed);
        for (int n = 0; n < 25; n++) {
            agreesWithQuadrature(random.nextUneven("seed " + seed + " axis " + n));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {55, 56})
    void coursesOverTimeAgreeWithQuadrature(long seed) {
        RandomAxes random = new RandomAxes(seed);
        for (int n = 0; n < 25; n++) {
            agreesWithQuadrature(random.nextTimed("seed " + seed + " axis " + n));
        }
    }

    static void agreesWithQuadrature(Axis axis) {
        AxisLoad load = AxisLoad.of(axis);
        LoadSums sums = LoadSums.of(load.pieces(), load.period());
        double inertia = INERTIA + load.addedInertia();
        DutyFigures figures = new CourseFigures(load.course(inertia)).figures(load, sums);
        TorqueOracle oracle = new TorqueOracle(axis, inertia);
        double period = oracle.period();
        double rms = Math.sqrt(oracle.integral(s -> s.torque() * s.torque()) / period);
        double rmsSpeed = Math.sqrt(oracle.integral(s -> s.speed() * s.speed()) / period);
        double motored = oracle.integral(s -> Math.max(0, s.torque() * s.speed()));
        double returned = oracle.integral(s -> Math.max(0, -s.torque() * s.speed()), motored);
        double speed = oracle.integral(s -> Math.abs(s.speed())) / period;
        assertThat(figures.rmsTorque().si()).as(axis.id()).isCloseTo(rms, relative(rms));
        assertThat(sums.rmsTorque(inertia)).as(axis.id()).isCloseTo(rms, relative(rms));
        assertThat(figures.rmsSpeed().si()).as(axis.id()).isCloseTo(rmsSpeed, relative(rmsSpeed));
        assertThat(figures.meanSpeed().si()).as(axis.id()).isCloseTo(speed, relative(speed));
        assertThat(figures.motoredEnergy().si()).as(axis.id()).isCloseTo(motored, relative(motored + returned));
        assertThat(figures.returnedEnergy().si()).as(axis.id()).isCloseTo(returned, relative(motored + returned));
    }

    /** What is motored and not returned was lifted, rubbed away, lost in transmission, or taken by the process. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22})
    void energyBalanceCloses(long seed) {
        RandomAxes random = new RandomAxes(seed);
        for (int n = 0; n < 50; n++) {
            Axis axis = switch (n % 3) {
                case 0 -> random.next("seed " + seed + " axis " + n);
                case 1 -> random.nextUneven("seed " + seed + " axis " + n);
                default -> random.nextTimed("seed " + seed + " axis " + n);
            };
            AxisLoad load = AxisLoad.of(axis);
            Course course = load.course(INERTIA);
            DutyFigures figures = new CourseFigures(course).figures(load, LoadSums.of(load.pieces(), load.period()));
            TorqueOracle oracle = new TorqueOracle(axis, INERTIA);
            double scale =
                    figures.motoredEnergy().si() + figures.returnedEnergy().si();
            double spent = oracle.integral(s -> s.friction() + s.process() + s.lifting() + s.loss(), scale);
            assertThat(figures.motoredEnergy().si() - figures.returnedEnergy().si())
                    .as(axis.id())
                    .isCloseTo(spent, relative(scale));
            assertThat(figures.meanPower().si() * figures.cyclePeriod().si())
                    .as(axis.id())
                    .isCloseTo(spent, relative(scale));
            assertThat(oracle.integral(s -> Math.min(0, s.loss()), scale))
                    .as(axis.id())
                    .isCloseTo(0, within(1e-9 * scale));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32})
    void peaksAreThoseOfDenseSampling(long seed) {
        RandomAxes random = new RandomAxes(seed);
        for (int n = 0; n < 30; n++) {
            Axis axis = n % 2 == 0
                    ? random.next("seed " + seed + " axis " + n)
                    : random.nextUneven("seed " + seed + " axis " + n);
            AxisLoad load = AxisLoad.of(axis);
            DutyFigures figures =
                    new CourseFigures(load.course(INERTIA)).figures(load, LoadSums.of(load.pieces(), load.period()));
            TorqueOracle oracle = new TorqueOracle(axis, INERTIA);
            double torque = 0;
            double motoring = 0;
            double returned = 0;
            double speed = 0;
            int steps = 20_000;
            for (int k = 0; k < steps; k++) {
                TorqueOracle.State state = oracle.at(load.period() * k / steps);
                torque = Math.max(torque, Math.abs(state.torque()));
                motoring = Math.max(motoring, state.torque() * state.speed());
                returned = Math.max(returned, -state.torque() * state.speed());
                speed = Math.max(speed, Math.abs(state.speed()));
            }
            atLeast(axis, figures.peakTorque().si(), torque);
            atLeast(axis, figures.peakSpeed().si(), speed);
            atLeast(axis, figures.peakMotoringPower().si(), motoring);
            atLeast(axis, figures.peakReturnedPower().si(), returned);
            reached(axis, oracle, figures.peakTorqueAt(), figures.peakTorque().si(), s -> Math.abs(s.torque()));
            reached(axis, oracle, figures.peakSpeedAt(), figures.peakSpeed().si(), s -> Math.abs(s.speed()));
            reached(
                    axis,
                    oracle,
                    figures.peakMotoringPowerAt(),
                    figures.peakMotoringPower().si(),
                    s -> s.torque() * s.speed());
            reached(
                    axis,
                    oracle,
                    figures.peakReturnedPowerAt(),
                    figures.peakReturnedPower().si(),
                    s -> -s.torque() * s.speed());
        }
    }

    /**
     * Theraja, Electrical Technology vol. III, ex. 44.4, p. 1780: 500 t down 1 in 80 for 90 s, 100 to 60 km/h, 50 N/t, rotating
     * masses 10 %, efficiency 0.75. Printed 43.43 kWh; 43.4224 from first principles.
     */
    @Test
    void energyReturnedOnADescent() {
        double mass = 500_000;
        Belt track = new Belt(
                new Length(2),
                new Inertia(0.1 * mass),
                new Mass(mass),
                new Angle(Math.asin(1 / 80.0)),
                1,
                null,
                new Friction(0, new Force(50 * 500), null));
        Drivetrain drivetrain =
                Drivetrain.of(Fixtures.axis("train", track, new Gear(3, 0.75, 0.75, new Inertia(0)), Fixtures.ANY));
        Polynomial speed = Polynomial.of(-100 / 3.6, 40 / 3.6 / 90);
        List<LoadPiece> pieces =
                drivetrain.moving(drivetrain.mechanics().effort(0, 0), 0, LoadMotion.of(0, speed, 90, -1));
        double returned = pieces.stream()
                .mapToDouble(p -> p.torque(0).times(p.speed()).integral(0, p.duration()))
                .sum();
        assertThat(-returned / 3.6e6).isCloseTo(43.4224, Assertions.withinPercentage(0.1));
    }

    @Test
    void piecesLieEndToEnd() {
        RandomAxes random = new RandomAxes(41);
        for (int n = 0; n < 50; n++) {
            AxisLoad load = AxisLoad.of(random.next("seed 41 axis " + n));
            double end = 0;
            for (Course.Piece piece : load.course(INERTIA).pieces()) {
                assertThat(piece.start()).isCloseTo(end, within(1e-12));
                assertThat(piece.duration()).isPositive();
                end = piece.end();
            }
            assertThat(end).isCloseTo(load.period(), within(1e-12));
        }
    }

    private static void atLeast(Axis axis, double exact, double sampled) {
        assertThat(exact).as(axis.id()).isGreaterThanOrEqualTo(sampled * (1 - 1e-9));
    }

    /** The peak is there just before or just after its instant: accelerations may jump at it. */
    private static void reached(
            Axis axis, TorqueOracle oracle, Time instant, double peak, ToDoubleFunction<TorqueOracle.State> measure) {
        double before = Math.max(0, instant.si() - 1e-9);
        double after = Math.min(oracle.period() - 1e-9, instant.si() + 1e-9);
        double found = Math.max(measure.applyAsDouble(oracle.at(before)), measure.applyAsDouble(oracle.at(after)));
        assertThat(found).as(axis.id()).isCloseTo(peak, Assertions.within(1e-5 * peak + 1e-9));
    }

    private static Offset<Double> within(double value) {
        return Assertions.within(value);
    }

    private static Offset<Double> relative(double scale) {
        return Assertions.within(1e-9 * scale + 1e-12);
    }
}
