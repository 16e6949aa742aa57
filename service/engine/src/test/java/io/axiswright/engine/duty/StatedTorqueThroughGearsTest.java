package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.SpeedPoint;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.design.WinderMotion;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Velocity;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Courses of stated effort through gears in series, and on mechanisms whose leverage changes. */
class StatedTorqueThroughGearsTest {

    private static final Gear AT_MOTOR = new Gear(4, 0.85, 0.7, new Inertia(2e-4), new Torque(0.04));
    private static final Gear AT_LOAD = new Gear(3, 0.9, 0.8, new Inertia(5e-3), new Torque(0.2));

    private static TorquePoint point(double time, Velocity speed, Effort effort) {
        return new TorquePoint(new Time(time), speed, effort);
    }

    private static Crank crank() {
        return new Crank(
                new Length(0.1),
                new Length(0.3),
                new Inertia(0.02),
                new Mass(12),
                new Angle(0),
                new Angle(0.4),
                0.88,
                0.75,
                null,
                null,
                null,
                null);
    }

    private static double way(double angle) {
        return 0.4 - 0.1 * Math.cos(angle) - Math.sqrt(0.09 - 0.01 * Math.sin(angle) * Math.sin(angle));
    }

    private static double through(double torque, double driving, double back) {
        return torque > 0 ? torque / driving : torque * back;
    }

    /** A force on the slider of a crank, instant by instant in small steps; the crank turns forwards throughout. */
    @Test
    void aForceOnASliderPassesCrankAndGears() {
        var course = new TorqueCourse(
                List.of(
                        point(0, new AngularSpeed(0), new Force(100)),
                        point(2, new AngularSpeed(6), new Force(-300)),
                        point(3, new AngularSpeed(0), new Force(500))),
                TorquePlace.LOAD,
                null);
        AxisLoad load = AxisLoad.of(Fixtures.geared("press", crank(), List.of(AT_MOTOR, AT_LOAD), ANY, course));
        double motor = 1e-4;
        DutyFigures figures = new CourseFigures(load.course(motor + load.addedInertia()))
                .figures(load, LoadSums.of(load.pieces(), load.period()));
        int steps = 600_000;
        double h = 3.0 / steps;
        double squares = 0;
        double motored = 0;
        double returned = 0;
        for (int k = 0; k < steps; k++) {
            double t = (k + 0.5) * h;
            double a = t < 2 ? 3 : -6;
            double w = t < 2 ? 3 * t : 6 * (3 - t);
            double angle = t < 2 ? 0.4 + 1.5 * t * t : 0.4 + 9 - 3 * (3 - t) * (3 - t);
            double force = t < 2 ? 100 - 200 * t : -300 + 800 * (t - 2);
            double lever = (way(angle + 1e-6) - way(angle - 1e-6)) / 2e-6;
            double shaft = through(force * lever, 0.88, 0.75) + 0.02 * a;
            double between = through(shaft, 0.9, 0.8) / 3 + 5e-3 * 3 * a + 0.2;
            double torque = through(between, 0.85, 0.7) / 4 + (2e-4 + motor) * 12 * a + 0.04;
            squares += torque * torque * h;
            motored += Math.max(0, torque * 12 * w) * h;
            returned += Math.max(0, -torque * 12 * w) * h;
        }
        double rms = Math.sqrt(squares / 3);
        assertThat(figures.rmsTorque().si()).isCloseTo(rms, within(1e-6 * rms));
        assertThat(figures.motoredEnergy().si()).isCloseTo(motored, within(1e-6 * motored));
        assertThat(figures.returnedEnergy().si()).isCloseTo(returned, within(1e-6 * motored));
        assertThat(load.netTravel()).isCloseTo(9, within(1e-12));
    }

    /** What a cycle asks for at the motor's end, stated there again, is the same cycle: same torque, same pull, same way. */
    @Test
    void aCycleStatedAtTheMotorIsTheCycle() {
        var belt = new Belt(new Length(0.08), new Inertia(8e-4), new Mass(30), new Angle(0.5), 0.93, 0.85, null);
        var cycle = new SpeedCourse(
                List.of(
                        new SpeedPoint(new Time(0), new Speed(0)),
                        new SpeedPoint(new Time(0.5), new Speed(1.2)),
                        new SpeedPoint(new Time(0.8), new Speed(1.2)),
                        new SpeedPoint(new Time(1.4), new Speed(-2)),
                        new SpeedPoint(new Time(1.9), new Speed(0))),
                null,
                null);
        List<Gear> gears = List.of(AT_MOTOR, AT_LOAD);
        AxisLoad once = AxisLoad.of(Fixtures.geared("belt", belt, gears, ANY, cycle));
        List<Segment> stated = new ArrayList<>();
        for (LoadPiece piece : once.pieces()) {
            List<TorquePoint> ends = new ArrayList<>();
            for (double t : new double[] {0, piece.duration()}) {
                double torque = piece.torque(2e-4).at(t);
                ends.add(point(t, new AngularSpeed(piece.speed().at(t)), new Torque(torque)));
            }
            stated.add(new TorqueCourse(ends, TorquePlace.MOTOR_SHAFT, null));
        }
        AxisLoad again = AxisLoad.of(Fixtures.geared("belt", belt, gears, ANY, stated.toArray(Segment[]::new)));
        assertThat(once.pieces()).hasSizeGreaterThan(4);
        assertThat(again.pieces()).hasSameSizeAs(once.pieces());
        for (int k = 0; k < once.pieces().size(); k++) {
            LoadPiece one = once.pieces().get(k);
            LoadPiece two = again.pieces().get(k);
            for (double t : new double[] {0, one.duration() / 3, one.duration()}) {
                assertThat(two.torque().at(t)).isCloseTo(one.torque().at(t), within(1e-9));
                assertThat(two.pull().at(t)).isCloseTo(one.pull().at(t), within(1e-9));
                assertThat(two.position().at(t)).isCloseTo(one.position().at(t), within(1e-12));
            }
        }
        assertThat(again.netTravel()).isCloseTo(once.netTravel(), within(1e-12));
        assertThat(again.travelled()).isCloseTo(once.travelled(), within(1e-12));
    }

    /** A length wound is what the roll turns times the radius it has just then, summed up in small steps. */
    @Test
    void aRollTurnedByTheMotorWindsItsMaterial() {
        var winder = new Winder(
                WinderMotion.LINE,
                new Length(0.1),
                new Inertia(0.002),
                new Length(0.5),
                new Mass(60),
                new Length(0.002),
                new Length(0.12),
                new Force(80),
                null,
                1,
                null);
        var course = new TorqueCourse(
                List.of(
                        point(0, new AngularSpeed(0), new Torque(1)),
                        point(2, new AngularSpeed(60), new Torque(1)),
                        point(3, new AngularSpeed(0), new Torque(-1))),
                TorquePlace.MOTOR_SHAFT,
                null);
        Axis axis = Fixtures.geared("roll", winder, List.of(AT_LOAD), ANY, course);
        AxisLoad load = AxisLoad.of(axis);
        double wound = 0;
        double angle = 0;
        int steps = 100_000;
        for (int k = 0; k < steps; k++) {
            double t = 3.0 * (k + 0.5) / steps;
            double turned = (t < 2 ? 30 * t : 60 * (3 - t)) / 3 * 3.0 / steps;
            wound += (0.06 + 0.002 * (angle + turned / 2) / (2 * Math.PI)) * turned;
            angle += turned;
        }
        assertThat(load.netTravel()).isCloseTo(wound, within(1e-7));
        assertThat(load.drivetrain().mechanics().effort(0, 0).holding(wound))
                .isCloseTo(80 * (0.06 + 0.002 * angle / (2 * Math.PI)), within(1e-5));
    }

    /** At rest the stated effort holds by the leverage of the place, and not at all through what locks itself. */
    @Test
    void atRestTheLeverageOfThePlaceCounts() {
        var course = new TorqueCourse(
                List.of(point(0, new AngularSpeed(0), new Force(100)), point(1, new AngularSpeed(0), new Force(200))),
                TorquePlace.LOAD,
                null);
        double lever = (way(0.4 + 1e-6) - way(0.4 - 1e-6)) / 2e-6;
        LoadPiece open = only(AT_LOAD, course);
        assertThat(open.torque().at(0.5)).isCloseTo(150 * lever / 3, within(1e-8));
        assertThat(open.pull().at(1)).isCloseTo(200 * lever, within(1e-7));
        LoadPiece locked = only(new Gear(3, 0.4, null, new Inertia(0)), course);
        assertThat(locked.torque().at(0.5)).isZero();
        assertThat(locked.pull().at(1)).isCloseTo(200 * lever, within(1e-7));
    }

    private static LoadPiece only(Gear gear, Segment segment) {
        List<LoadPiece> pieces = AxisLoad.of(Fixtures.geared("press", crank(), List.of(gear), ANY, segment))
                .pieces();
        assertThat(pieces).hasSize(1);
        return pieces.getFirst();
    }
}
