package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.dwell;
import static io.axiswright.engine.duty.Fixtures.turn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How hard the rod of a crank of radius 0.1 m and rod 0.3 m presses its slider against the guide. */
class SideThrustTest {

    private static final double RADIUS = 0.1;
    private static final double ROD = 0.3;
    private static final double SPEED = 2 * Math.PI; // a turn a second

    private static Crank crank(double mass, double offset, @Nullable Friction friction) {
        return new Crank(
                new Length(RADIUS),
                new Length(ROD),
                new Inertia(0.02),
                new Mass(mass),
                new Angle(0),
                new Angle(0),
                1,
                null,
                friction,
                new Length(offset),
                null,
                null);
    }

    /** One turn a second under a steady process force. */
    private static Run turning(double force) {
        return new Run(new AngularSpeed(SPEED), new Time(1), null, null, new Force(force));
    }

    private static @Nullable SideThrust thrust(Crank crank, Segment... segments) {
        Axis axis = axis("press", crank, null, ANY, segments);
        return SideThrust.of(axis, AxisLoad.of(axis));
    }

    /**
     * A slider without mass under 1000 N. In line the rod is farthest off at a quarter turn: sin(phi) = 0.1/0.3, tan(phi) =
     * 1/√8, N = 353.55 N. With the line 50 mm off towards the pin at a quarter turn it is at three quarters: sin(phi) =
     * (0.1 + 0.05)/0.3 = 0.5, phi = 30°, N = 1000·tan(30°) = 577.35 N; with 50 mm the other way the same at a quarter.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 353.5533906, 0.3398369095, 90",
        "0.05, 577.3502692, 0.5235987756, 270",
        "-0.05, 577.3502692, 0.5235987756, 90"
    })
    void steadyForceByHand(double offset, double peak, double rodAngle, double degrees) {
        SideThrust thrust = Objects.requireNonNull(thrust(crank(0, offset, null), turning(1000)));
        assertThat(thrust.peak().si()).isCloseTo(peak, within(1e-6 * peak));
        assertThat(thrust.force().si()).isCloseTo(1000, within(1e-9));
        assertThat(thrust.rodAngle().si()).isCloseTo(rodAngle, within(1e-6));
        double turned = Math.toDegrees(thrust.crankAngle().si());
        // in line both quarters are alike
        assertThat(offset == 0 && turned > 180 ? turned - 180 : turned).isCloseTo(degrees, within(0.01));
        assertThat(thrust.instant().si()).isCloseTo(thrust.crankAngle().si() / SPEED, within(1e-9));
        assertThat(thrust.friction()).isNull();
    }

    /**
     * Inertia at 45° by hand: 12 kg at 2·pi rad/s. u = 0.1·sin 45° = 0.0707107, f = √(0.09 − 0.005) = 0.2915476; f' = −u·u'/f =
     * −0.005/0.2915476 = −0.0171499; f'' = −(u'² + u·u'' + f'²)/f = −(0.005 − 0.005 + 0.000294118)/0.2915476 = −0.00100882;
     * x'' = 0.0707107 + 0.00100882 = 0.0717195. F = 12·0.0717195·39.478418 = 33.9762 N, N = F·0.0707107/0.2915476 = 8.24046 N.
     */
    @Test
    void inertiaByHand() {
        Axis axis = axis("press", crank(12, 0, null), null, ANY, turning(0));
        LoadPiece piece = AxisLoad.of(axis).pieces().stream()
                .filter(one -> one.start() <= 0.125 && one.end() > 0.125)
                .findFirst()
                .orElseThrow();
        CrankEffort effort = (CrankEffort) piece.effort();
        CrankState state = CrankState.of(piece);
        assertThat(effort.sliderForce(state, 0.125 - piece.start())).isCloseTo(33.9762, within(1e-3));
        assertThat(effort.thrust(state, 0.125 - piece.start())).isCloseTo(8.24046, within(1e-4));
    }

    /**
     * R. S. Khurmi and J. K. Gupta, Theory of Machines, ex. 15.7, p. 533: pressure on the slide bars 10.97 kN, and ex. 15.9, p. 534:
     * reaction between piston and cylinder 254 N (Python Textbook Companions, chapter 15). The book takes the acceleration by two
     * terms of its series; the exact one leaves 0.05 % and 0.42 % less.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 1.2, 250, 250, 60, 68722.3393, 10970, 1e-3", "0.05, 0.2, 1, 1800, 33, 3518.5838, 254, 5e-3"})
    void publishedThrusts(
            double radius,
            double rod,
            double mass,
            double turnsPerMinute,
            double degrees,
            double push,
            double printed,
            double tolerance) {
        Crank crank = Copies.with(
                Copies.with(crank(mass, 0, null), "radius", new Length(radius)), "rodLength", new Length(rod));
        double speed = 2 * Math.PI * turnsPerMinute / 60;
        Axis axis = axis(
                "engine",
                crank,
                null,
                ANY,
                new Run(new AngularSpeed(speed), new Time(60 / turnsPerMinute), null, null, new Force(-push)));
        double time = Math.toRadians(degrees) / speed;
        LoadPiece piece = AxisLoad.of(axis).pieces().stream()
                .filter(one -> one.start() <= time && one.end() > time)
                .findFirst()
                .orElseThrow();
        double thrust = ((CrankEffort) piece.effort()).thrust(CrankState.of(piece), time - piece.start());
        assertThat(Math.abs(thrust)).isCloseTo(printed, within(tolerance * printed));
    }

    /** Inertia, weight and friction together against the slider's place differentiated twice by differences, instant by instant. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.08, 0.3", "-0.12, -0.9"})
    void theWorstInstantIsThatOfDenseSampling(double offset, double slope) {
        Crank crank =
                Copies.with(crank(12, offset, new Friction(0.1, new Force(20), null)), "inclination", new Angle(slope));
        SideThrust thrust = Objects.requireNonNull(
                thrust(crank, turn(4, 0.7, new Polynomial345()), dwell(0.2), turn(-4, 0.5, new Polynomial345())));
        double most = 0;
        double at = 0;
        for (int k = 0; k < 140_000; k++) {
            double time = 1e-5 * (k + 0.5);
            double step = 1e-5;
            double place = place(angle(time), offset);
            double before = place(angle(time - step), offset);
            double after = place(angle(time + step), offset);
            boolean turns = time < 0.7 - step || time > 0.9 + step;
            double acceleration = turns ? (after - 2 * place + before) / (step * step) : 0;
            double direction = turns ? Math.signum(after - before) : 0;
            double weight = 12 * 9.80665;
            double force =
                    12 * acceleration + weight * Math.sin(slope) + direction * (0.1 * weight * Math.cos(slope) + 20);
            double sine = (RADIUS * Math.sin(angle(time)) - offset) / ROD;
            double size = Math.abs(force * Math.tan(Math.asin(sine)));
            at = size > most ? time : at;
            most = Math.max(most, size);
        }
        assertThat(thrust.peak().si()).isCloseTo(most, within(1e-4 * most));
        assertThat(thrust.instant().si()).isCloseTo(at, within(1e-3));
        assertThat(Objects.requireNonNull(thrust.friction()).si()).isCloseTo(0.1 * most, within(1e-4 * most));
    }

    private static double angle(double time) {
        double out = Math.clamp(time / 0.7, 0, 1);
        double back = Math.clamp((time - 0.9) / 0.5, 0, 1);
        return 4 * (course(out) - course(back));
    }

    private static double course(double u) {
        return u * u * u * (10 - 15 * u + 6 * u * u);
    }

    /** How far the slider has come from the far side of the shaft. */
    private static double place(double angle, double offset) {
        double off = RADIUS * Math.sin(angle) - offset;
        return -RADIUS * Math.cos(angle) - Math.sqrt(ROD * ROD - off * off);
    }

    @Test
    void thereIsNoneWithoutARod() {
        assertThat(thrust(Copies.with(crank(12, 0, null), "rodLength", null), turning(100)))
                .isNull();
        Axis lift = axis("lift", Fixtures.hoist(0.1, 0.001, 20, 0, 0.9), null, ANY, dwell(1));
        assertThat(SideThrust.of(lift, AxisLoad.of(lift))).isNull();
    }

    /** What the rod bears is not known where the torque is stated instead of the load. */
    @Test
    void thereIsNoneUnderAStatedTorque() {
        var rest = new AngularSpeed(0);
        var course = new TorqueCourse(
                List.of(
                        new TorquePoint(new Time(0), rest, new Torque(1)),
                        new TorquePoint(new Time(1), new AngularSpeed(2), new Torque(2)),
                        new TorquePoint(new Time(2), rest, new Torque(1))),
                TorquePlace.MOTOR_SHAFT,
                null);
        assertThat(thrust(crank(12, 0, null), course)).isNull();
    }

    @Test
    void theAnswerStatesItWithItsDerivation() {
        Axis axis = axis("press", crank(0, 0.05, null), null, ANY, turning(1000));
        DutyResult result = new DutySizing()
                .size(Fixtures.request(List.of(axis), List.of(Fixtures.unit("u", "F", 60, 20, 1e-4, 60, 1))));
        SideThrust thrust = Objects.requireNonNull(result.axes().getFirst().sideThrust());
        assertThat(result.derivations())
                .filteredOn(derivation -> derivation.symbol().equals("N_side"))
                .singleElement()
                .satisfies(derivation -> assertThat(derivation.result()).isEqualTo(thrust.peak()));
    }
}
