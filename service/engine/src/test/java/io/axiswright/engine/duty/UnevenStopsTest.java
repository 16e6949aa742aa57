package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.dwell;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.SpeedPoint;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stops of mechanisms that change along their way, and what must hold for all of them. */
class UnevenStopsTest {

    private static final double G = 9.80665;

    private static Crank crank() {
        return new Crank(
                new Length(0.1),
                new Length(0.3),
                new Inertia(0.02),
                new Mass(12),
                new Angle(Math.PI / 2),
                new Angle(0.4),
                1,
                null,
                null,
                null,
                null,
                null);
    }

    private static double way(double angle) {
        return 0.4 - 0.1 * Math.cos(angle) - Math.sqrt(0.09 - 0.01 * Math.sin(angle) * Math.sin(angle));
    }

    /** Energy: what the motor takes out in a stop is what moved and what sank, from the place where the stop began. */
    @Test
    void aStopTakesOutTheEnergyOfItsPlace() {
        Axis axis = axis(
                "press",
                crank(),
                null,
                ANY,
                new Move(new Angle(9), new Time(2), new Polynomial345(), null, null),
                dwell(0.3));
        AxisLoad load = AxisLoad.of(axis);
        double inertia = 0.005;
        for (StopCourse stop : stops(load, inertia, 2)) {
            double u = stop.instant() / 2;
            double angle = 0.4 + 9 * (10 * Math.pow(u, 3) - 15 * Math.pow(u, 4) + 6 * Math.pow(u, 5));
            double speed = 9.0 / 2 * 30 * u * u * (1 - u) * (1 - u);
            double end = angle + speed * Fixtures.ZONE.decelerationTime().si() / 2;
            double slope = (way(angle + 1e-6) - way(angle - 1e-6)) / 2e-6;
            double moving = (0.02 + inertia + 12 * slope * slope) * speed * speed / 2;
            double lifted = 12 * G * (way(end) - way(angle));
            double given = stop.course().pieces().stream()
                    .mapToDouble(p -> p.torque().times(p.speed()).integral(0, p.duration()))
                    .sum();
            assertThat(given).as("stop at %s s", stop.instant()).isCloseTo(lifted - moving, within(1e-6));
            assertThat(stop.course().duration())
                    .isCloseTo(Fixtures.ZONE.decelerationTime().si(), within(1e-9));
        }
    }

    /** Stops begun evenly over the first so many seconds of the cycle, none of them at rest. */
    private static List<StopCourse> stops(AxisLoad load, double inertia, double seconds) {
        EvenStops stops =
                new EvenStops(load, inertia, Fixtures.ZONE.decelerationTime().si());
        List<StopCourse> all = new ArrayList<>();
        for (int k = 0; k < 100; k++) {
            double instant = seconds * (k + 0.5) / 100;
            all.add(new StopCourse(instant, stops.from(instant, instant)));
        }
        return all;
    }

    static List<Segment> sameSpeeds() {
        Time one = new Time(1);
        AngularSpeed rest = new AngularSpeed(0);
        AngularSpeed fast = new AngularSpeed(8);
        var speeds = List.of(
                new SpeedPoint(new Time(0), rest), new SpeedPoint(one, fast), new SpeedPoint(new Time(2), rest));
        var torques = List.of(
                new TorquePoint(new Time(0), rest, new Torque(3)),
                new TorquePoint(one, fast, new Torque(-9)),
                new TorquePoint(new Time(2), rest, new Torque(1)));
        var forces = List.of(
                new TorquePoint(new Time(0), rest, new Force(30)),
                new TorquePoint(one, fast, new Force(-90)),
                new TorquePoint(new Time(2), rest, new Force(10)));
        return List.of(
                new SpeedCourse(speeds, null, null),
                new TorqueCourse(torques, TorquePlace.MOTOR_SHAFT, null),
                new TorqueCourse(forces, TorquePlace.LOAD, null));
    }

    /** However the speed over time was stated, a stop begins at its place and takes out the energy of it. */
    @ParameterizedTest
    @MethodSource("sameSpeeds")
    void aStopOutOfACourseTakesOutTheEnergyOfItsPlace(Segment course) {
        AxisLoad load = AxisLoad.of(axis("press", crank(), null, ANY, course));
        double inertia = 0.005;
        for (StopCourse stop : stops(load, inertia, 2)) {
            double t = stop.instant();
            double speed = t < 1 ? 8 * t : 8 * (2 - t);
            double angle = t < 1 ? 0.4 + 4 * t * t : 0.4 + 8 - 4 * (2 - t) * (2 - t);
            double end = angle + speed * Fixtures.ZONE.decelerationTime().si() / 2;
            double slope = (way(angle + 1e-6) - way(angle - 1e-6)) / 2e-6;
            double moving = (0.02 + inertia + 12 * slope * slope) * speed * speed / 2;
            double lifted = 12 * G * (way(end) - way(angle));
            double given = stop.course().pieces().stream()
                    .mapToDouble(p -> p.torque().times(p.speed()).integral(0, p.duration()))
                    .sum();
            assertThat(given).as("stop at %s s", t).isCloseTo(lifted - moving, within(1e-6));
        }
    }

    /** The hardest stop of a crank, held against the curve of its unit speed by speed, over a thousand instants of its cycle. */
    @Test
    void theHardestStopIsTheWorstOfAllPlaces() {
        Axis axis = Fixtures.inZone(axis(
                "press",
                crank(),
                null,
                ANY,
                new Move(new Angle(9), new Time(2), new Polynomial345(), null, null),
                dwell(0.3)));
        AxisDuty duty = Fixtures.size(axis, Fixtures.unit("u", "F", 9, 12, 1e-4, 60, 1));
        LimitUse hardest = java.util.Objects.requireNonNull(duty.hardestStop());
        StopModel stops = java.util.Objects.requireNonNull(duty.stopModel());
        double most = 0;
        double at = 0;
        for (int start = 0; start < 1000; start++) {
            double instant = 2 * (start + 0.5) / 1000;
            for (Course.Piece piece : stops.from(instant, instant).pieces()) {
                for (int k = 0; k <= 200; k++) {
                    double t = piece.duration() * k / 200;
                    // straight from 27 N·m to 7.56 rad/s, on to 8.1 N·m at 10.8 rad/s, at 10 % low line
                    double speed = Math.abs(piece.speed().at(t));
                    double curve = speed <= 7.56 ? 27 : speed <= 10.8 ? 27 - 18.9 * (speed - 7.56) / 3.24 : 0;
                    double use = Math.min(1000, Math.abs(piece.torque().at(t)) / curve);
                    at = use > most ? instant : at;
                    most = Math.max(most, use);
                }
            }
        }
        assertThat(hardest.use()).isCloseTo(most, within(1e-4 * most));
        assertThat(java.util.Objects.requireNonNull(hardest.instant()).si()).isCloseTo(at, within(0.02));
    }

    /** Where the slider has least leverage the crank carries least; over a turn the largest of both is found. */
    @Test
    void holdingAndInertiaAreTheLargestOfTheWay() {
        LoadEffort effort = Mechanics.of(crank()).effort(3, 0);
        double most = 0;
        for (double angle = 0.4; angle < 1.2; angle += 1e-5) {
            most = Math.max(most, (way(angle + 1e-6) - way(angle - 1e-6)) / 2e-6);
        }
        assertThat(effort.largestHolding(0.4, 1.2)).isCloseTo(15 * G * most, within(1e-4));
        assertThat(effort.largestInertia(1.2, 0.4)).isCloseTo(15 * most * most, within(1e-5));
        assertThat(effort.largestHolding(0.4, 50)).isGreaterThanOrEqualTo(effort.largestHolding(0.4, 1.2));
    }

    /**
     * Heavier loads on the level never ask for less torque in the direction of motion. Torque against it may fall: friction of
     * the load helps to brake what turns, and a self-locking screw more so. Counterweights and slopes are exceptions of their own.
     */
    @ParameterizedTest
    @ValueSource(longs = {61, 62})
    void moreMassNeverLowersTheDrivingPeakOnTheLevel(long seed) {
        RandomAxes random = new RandomAxes(seed);
        int seen = 0;
        for (int n = 0; n < 500; n++) {
            Axis axis = random.next("seed " + seed + " axis " + n);
            double once = peak(axis, 1);
            double twice = peak(axis, 2);
            if (once >= 0) {
                assertThat(twice).as(axis.id()).isGreaterThanOrEqualTo(once * (1 - 1e-12));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(20);
    }

    /** Peak in the direction of motion with the mass so many times; −1 where the axis is none on the level that the motor alone moves. */
    private static double peak(Axis axis, double times) {
        Mechanism mechanism = heavier(axis.mechanism(), times);
        boolean pushed = axis.cycle().segments().stream().anyMatch(s -> s.processEffort() != null);
        if (mechanism == null || pushed) {
            return -1;
        }
        Segment[] segments = axis.cycle().segments().toArray(Segment[]::new);
        AxisLoad load = AxisLoad.of(Fixtures.geared(axis.id(), mechanism, axis.gears(), ANY, segments));
        double peak = 0;
        for (Course.Piece piece : load.course(1e-4).pieces()) {
            double direction = Math.signum(piece.speed().at(piece.duration() / 2));
            Polynomial driving = piece.torque().times(direction);
            for (double t : driving.extremalPoints(0, piece.duration())) {
                peak = Math.max(peak, driving.at(t));
            }
        }
        return peak;
    }

    private static @Nullable Mechanism heavier(Mechanism mechanism, double times) {
        return switch (mechanism) {
            case Screw s
            when s.inclination().si() == 0 ->
                new Screw(
                        s.lead(),
                        s.diameter(),
                        s.length(),
                        new Mass(times * s.load().si()),
                        s.inclination(),
                        java.util.Objects.requireNonNull(s.efficiency()),
                        s.backDrivingEfficiency(),
                        s.friction());
            case Belt b
            when b.inclination().si() == 0 ->
                new Belt(
                        b.pulleyDiameter(),
                        b.pulleyInertia(),
                        new Mass(times * b.load().si()),
                        b.inclination(),
                        b.efficiency(),
                        b.backDrivingEfficiency(),
                        b.friction());
            case RackAndPinion r
            when r.inclination().si() == 0 ->
                new RackAndPinion(
                        r.pitchDiameter(),
                        r.pinionInertia(),
                        new Mass(times * r.load().si()),
                        r.inclination(),
                        r.efficiency(),
                        r.backDrivingEfficiency(),
                        r.friction());
            default -> null;
        };
    }

    @Test
    void restNeverRaisesTheRmsOfAnUnevenMechanism() {
        RandomAxes random = new RandomAxes(63);
        for (int n = 0; n < 30; n++) {
            Axis axis = random.nextUneven("seed 63 axis " + n);
            AxisLoad load = AxisLoad.of(axis);
            List<LoadPiece> longer = new ArrayList<>(load.pieces());
            Polynomial zero = Polynomial.ZERO;
            longer.add(LoadPiece.of(
                    load.period(),
                    1,
                    zero,
                    zero,
                    zero,
                    zero,
                    zero,
                    load.pieces().getFirst().effort()));
            assertThat(LoadSums.of(longer, load.period() + 1).rmsTorque(1e-4))
                    .as(axis.id())
                    .isLessThanOrEqualTo(
                            LoadSums.of(load.pieces(), load.period()).rmsTorque(1e-4));
        }
    }

    @Test
    void theOrderOfAxesChangesNothingButTheOrder() {
        RandomAxes random = new RandomAxes(64);
        List<Axis> axes = new ArrayList<>();
        for (int n = 0; n < 8; n++) {
            axes.add(n % 2 == 0 ? random.next("axis " + n) : random.nextUneven("axis " + n));
        }
        List<Axis> turned = new ArrayList<>(axes);
        Collections.reverse(turned);
        var unit = Fixtures.unit("u", 20, 100);
        List<AxisDuty> one =
                new DutySizing().size(Fixtures.request(axes, List.of(unit))).axes();
        List<AxisDuty> other =
                new DutySizing().size(Fixtures.request(turned, List.of(unit))).axes();
        assertThat(other.reversed()).isEqualTo(one);
    }
}
