package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomPoint;
import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.HoistRope;
import io.axiswright.engine.design.Interpolation;
import io.axiswright.engine.design.Jog;
import io.axiswright.engine.design.Leg;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.ModifiedSine;
import io.axiswright.engine.design.ModifiedTrapezoid;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.Polynomial4567;
import io.axiswright.engine.design.PositionCourse;
import io.axiswright.engine.design.PositionPoint;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.SimpleHarmonic;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.SpeedPoint;
import io.axiswright.engine.design.TableInterpolation;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.design.WinderMotion;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Velocity;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Mechanisms whose effort depends on position, moved by every law and every kind of segment. */
class MechanismCyclesTest {

    private static final List<MotionLaw> LAWS = List.of(
            new Trapezoidal(0.3, 0.2),
            new Triangular(),
            new SCurve(0.4, 0.5),
            new SimpleHarmonic(),
            new Cycloidal(),
            new Polynomial345(),
            new Polynomial4567(),
            new ModifiedTrapezoid(),
            new ModifiedSine());

    private static final List<Gear> GEARS = List.of(
            new Gear(4, 0.9, null, new Inertia(2e-5), new Torque(0.05)),
            new Gear(3, 0.95, 0.9, new Inertia(3e-4), null));

    static List<Mechanism> mechanisms() {
        return List.of(
                new Crank(
                        new Length(0.08),
                        new Length(0.3),
                        new Inertia(0.02),
                        new Mass(15),
                        new Angle(0.7),
                        new Angle(0.3),
                        0.92,
                        null,
                        null,
                        null,
                        null,
                        null),
                new Crank(
                        new Length(0.08),
                        new Length(0.2),
                        new Inertia(0.02),
                        new Mass(15),
                        new Angle(-0.7),
                        new Angle(0.3),
                        0.92,
                        null,
                        new Friction(0.1, new Force(20), null),
                        new Length(0.05),
                        new Mass(4),
                        0.4),
                winder(WinderMotion.LINE),
                winder(WinderMotion.SHAFT),
                custom(TableInterpolation.LINEAR),
                hoist());
    }

    private static Hoist hoist() {
        return new Hoist(
                new Length(0.3),
                new Inertia(0.01),
                new Mass(40),
                new Mass(25),
                1,
                0.93,
                null,
                new HoistRope(new Mass(8), new Length(20), new Length(5), false),
                new Torque(1.5),
                new RotaryDamping(0.4));
    }

    private static Winder winder(WinderMotion motion) {
        return new Winder(
                motion,
                new Length(0.1),
                new Inertia(0.002),
                new Length(0.5),
                new Mass(60),
                new Length(0.002),
                new Length(0.12),
                new Force(80),
                new Torque(0.4),
                0.95,
                null,
                new RotaryDamping(0.06));
    }

    private static Custom custom(TableInterpolation interpolation) {
        return new Custom(
                List.of(point(0, 2, 0.05), point(1.5, -3, 0.09), point(3, 4, 0.04), point(2 * Math.PI, 2, 0.05)),
                interpolation,
                true,
                new Angle(0.2),
                new Torque(0.3));
    }

    private static CustomPoint point(double angle, double torque, double inertia) {
        return new CustomPoint(new Angle(angle), new Torque(torque), new Inertia(inertia));
    }

    @ParameterizedTest
    @MethodSource("mechanisms")
    void everyLawAgreesWithQuadrature(Mechanism mechanism) {
        for (MotionLaw law : LAWS) {
            agrees(mechanism, law.getClass().getSimpleName(), move(mechanism, 2.2, law), Fixtures.dwell(0.2));
        }
    }

    @ParameterizedTest
    @MethodSource("mechanisms")
    void everySegmentAgreesWithQuadrature(Mechanism mechanism) {
        Velocity out = speed(mechanism, 1.6);
        Velocity back = speed(mechanism, -0.8);
        agrees(
                mechanism,
                "runs and ramps",
                new Ramp(null, out, new Time(0.4), null, null, 0.6, null, null),
                new Run(out, new Time(0.7), null, null, null),
                new Ramp(out, back, new Time(0.5), null, null, null, null, null),
                new Run(back, null, displacement(mechanism, -0.3), null, null),
                new Ramp(back, null, null, displacement(mechanism, -0.2), null, 1.0, null, null));
        agrees(
                mechanism,
                "jog",
                new Jog(
                        out,
                        new Leg(new Time(0.3), null, null),
                        new Leg(null, displacement(mechanism, 1.3), null),
                        new Leg(null, displacement(mechanism, 0.2), null),
                        null,
                        null));
        agrees(
                mechanism,
                "speed course",
                new SpeedCourse(
                        List.of(
                                new SpeedPoint(new Time(1), speed(mechanism, 0)),
                                new SpeedPoint(new Time(1.4), speed(mechanism, 1.7)),
                                new SpeedPoint(new Time(2.1), speed(mechanism, -0.9)),
                                new SpeedPoint(new Time(2.6), speed(mechanism, 0))),
                        null,
                        null));
    }

    /** Two points of a quintic at rest, without acceleration, are the polynomial 3-4-5. */
    @ParameterizedTest
    @MethodSource("mechanisms")
    void aPositionCourseIsTheMoveItDescribes(Mechanism mechanism) {
        var course = new PositionCourse(
                List.of(
                        new PositionPoint(new Time(3), displacement(mechanism, 5)),
                        new PositionPoint(new Time(4.2), displacement(mechanism, 7.2))),
                Interpolation.QUINTIC_SPLINE,
                null,
                null,
                null,
                null);
        DutyFigures stated = figures(axis(mechanism, "course", course));
        DutyFigures moved = figures(axis(mechanism, "move", move(mechanism, 2.2, new Polynomial345())));
        assertThat(stated.rmsTorque().si())
                .isCloseTo(
                        moved.rmsTorque().si(), within(1e-9 * moved.rmsTorque().si()));
        assertThat(stated.peakTorque().si())
                .isCloseTo(
                        moved.peakTorque().si(),
                        within(1e-8 * moved.peakTorque().si()));
        assertThat(stated.motoredEnergy().si())
                .isCloseTo(
                        moved.motoredEnergy().si(),
                        within(1e-9 * moved.motoredEnergy().si()));
        // 7.2 − 5 is not quite 2.2
        assertThat(stated.holdingTorque().si())
                .isCloseTo(
                        moved.holdingTorque().si(),
                        within(1e-14 * Math.max(1, moved.holdingTorque().si())));
    }

    private static void agrees(Mechanism mechanism, String what, Segment... segments) {
        CourseTest.agreesWithQuadrature(axis(mechanism, mechanism.getClass().getSimpleName() + ", " + what, segments));
    }

    private static Axis axis(Mechanism mechanism, String id, Segment... segments) {
        return Fixtures.geared(id, mechanism, GEARS, ANY, segments);
    }

    private static DutyFigures figures(Axis axis) {
        AxisLoad load = AxisLoad.of(axis);
        return new CourseFigures(load.course(3e-4)).figures(load, LoadSums.of(load.pieces(), load.period()));
    }

    private static Move move(Mechanism mechanism, double distance, MotionLaw law) {
        return new Move(displacement(mechanism, distance), new Time(1.2), law, null, null);
    }

    private static Displacement displacement(Mechanism mechanism, double size) {
        return mechanism.movesByAngle() ? new Angle(size) : new Length(size);
    }

    private static Velocity speed(Mechanism mechanism, double size) {
        return mechanism.movesByAngle() ? new AngularSpeed(size) : new Speed(size);
    }
}
