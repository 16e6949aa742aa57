package io.axiswright.engine.design;

import static io.axiswright.engine.Copies.with;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.motion.CycleCheck;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Mechanisms that contradict themselves or their cycle. */
class MechanismCheckTest {

    private static final Length ZERO = new Length(0);

    private static List<Fault> faults(Mechanism mechanism, Displacement... moves) {
        List<Segment> segments = new java.util.ArrayList<>(List.of(new Dwell(new Time(1), null, null, false)));
        for (Displacement distance : moves) {
            segments.add(new Move(distance, new Time(1), new Triangular(), null, null));
        }
        return faults(axis(mechanism, segments));
    }

    /** Of the mechanism by itself, and of how far its cycle takes it. */
    private static List<Fault> faults(Axis axis) {
        List<Fault> faults = new java.util.ArrayList<>(MechanismCheck.faults(axis, "/axes/0"));
        faults.addAll(CycleCheck.faults(axis, "/axes/0"));
        return faults;
    }

    private static Axis axis(Mechanism mechanism, List<Segment> segments) {
        return axis(mechanism, List.of(), segments);
    }

    private static Axis axis(Mechanism mechanism, List<Gear> gears, List<Segment> segments) {
        return new Axis(
                "a",
                null,
                mechanism,
                gears,
                null,
                new Cycle(segments),
                new Position(ZERO, ZERO, ZERO),
                null,
                null,
                new Frequency(250),
                DriveWish.any(),
                null);
    }

    private static void refused(List<Fault> faults, String pointer, FaultCode code) {
        assertThat(faults).hasSize(1);
        assertThat(faults.getFirst().pointer()).isEqualTo("/axes/0" + pointer);
        assertThat(faults.getFirst().code()).isEqualTo(code);
        assertThat(faults.getFirst().accepted()).isNotBlank();
    }

    private static Screw screw(
            @Nullable Double efficiency, @Nullable ScrewThread thread, @Nullable ScrewSupport support) {
        return new Screw(
                new Length(0.01),
                new Length(0.02),
                new Length(1),
                new Mass(20),
                new Angle(0),
                efficiency,
                null,
                null,
                thread,
                null,
                null,
                support,
                null);
    }

    private static ScrewThread thread(double friction, double diameter) {
        return new ScrewThread(friction, new Length(diameter), new Angle(0), null);
    }

    @Test
    void screws() {
        assertThat(faults(screw(0.9, null, null))).isEmpty();
        assertThat(faults(screw(null, thread(0.1, 0.018), null))).isEmpty();
        refused(faults(screw(null, null, null)), "/mechanism/efficiency", FaultCode.MISSING);
        refused(faults(screw(0.9, thread(0.1, 0.018), null)), "/mechanism/thread", FaultCode.INCONSISTENT);
        refused(
                faults(screw(null, thread(0.1, 0.021), null)),
                "/mechanism/thread/pitchDiameter",
                FaultCode.INCONSISTENT);
        refused(faults(screw(null, thread(1.9, 0.005), null)), "/mechanism/thread/friction", FaultCode.INCONSISTENT);
        refused(
                faults(screw(
                        0.9, null, new ScrewSupport(EndFixity.FIXED_FREE, new Length(0.03), null, null, null, null))),
                "/mechanism/support/rootDiameter",
                FaultCode.INCONSISTENT);
        refused(
                faults(screw(
                        0.9,
                        null,
                        new ScrewSupport(EndFixity.FIXED_FREE, new Length(0.01), new Length(2), null, null, null))),
                "/mechanism/support/unsupportedLength",
                FaultCode.INCONSISTENT);
    }

    private static Crank crank(double radius, @Nullable Length rod) {
        return new Crank(
                new Length(radius),
                rod,
                new Inertia(0),
                new Mass(1),
                new Angle(0),
                new Angle(0),
                1,
                null,
                null,
                null,
                null,
                null);
    }

    @Test
    void cranks() {
        assertThat(faults(crank(0.1, new Length(0.11)), new Angle(6))).isEmpty();
        assertThat(faults(crank(0.1, null), new Angle(6))).isEmpty();
        refused(faults(crank(0.1, new Length(0.1)), new Angle(6)), "/mechanism/rodLength", FaultCode.INCONSISTENT);
        refused(faults(crank(0.1, null), new Angle(700), new Angle(-700)), "/cycle", FaultCode.OUT_OF_RANGE);
        Crank rodded = crank(0.1, new Length(0.2));
        assertThat(faults(with(with(rodded, "offset", new Length(-0.09)), "rodMass", new Mass(1)), new Angle(6)))
                .isEmpty();
        refused(
                faults(with(rodded, "offset", new Length(-0.1)), new Angle(6)),
                "/mechanism/rodLength",
                FaultCode.INCONSISTENT);
        refused(
                faults(with(crank(0.1, null), "offset", new Length(0.01)), new Angle(6)),
                "/mechanism/offset",
                FaultCode.INCONSISTENT);
        refused(
                faults(with(crank(0.1, null), "rodMass", new Mass(1)), new Angle(6)),
                "/mechanism/rodMass",
                FaultCode.INCONSISTENT);
        refused(faults(with(rodded, "rodCentre", 0.3), new Angle(6)), "/mechanism/rodCentre", FaultCode.INCONSISTENT);
    }

    private static Hoist hoist(@Nullable Mass counterweight, int reeving, double start, boolean compensated) {
        return new Hoist(
                new Length(0.4),
                new Inertia(0),
                new Mass(100),
                counterweight,
                reeving,
                1,
                null,
                new HoistRope(new Mass(10), new Length(10), new Length(start), compensated));
    }

    @Test
    void ropes() {
        assertThat(faults(hoist(null, 1, 2, false), new Length(8), new Length(-10)))
                .isEmpty();
        assertThat(faults(hoist(new Mass(50), 1, 2, true), new Length(8))).isEmpty();
        refused(
                faults(hoist(null, 1, 2, false), new Length(5), new Length(4)),
                "/cycle/segments/2",
                FaultCode.OUT_OF_RANGE);
        refused(faults(hoist(null, 1, 2, false), new Length(-3)), "/cycle/segments/1", FaultCode.OUT_OF_RANGE);
        refused(faults(hoist(null, 1, 11, false)), "/mechanism", FaultCode.OUT_OF_RANGE);
        refused(faults(hoist(null, 2, 2, false)), "/mechanism/rope", FaultCode.INCONSISTENT);
        refused(faults(hoist(null, 1, 2, true)), "/mechanism/rope/compensated", FaultCode.INCONSISTENT);
    }

    private static Winder winder(WinderMotion motion, double core, double start) {
        return new Winder(
                motion,
                new Length(core),
                new Inertia(0),
                new Length(0.5),
                new Mass(20),
                new Length(0.001),
                new Length(start),
                new Force(10),
                null,
                1,
                null);
    }

    @Test
    void rolls() {
        // pi·(0.25² − 0.05²)/0.001 = 188.5 m, (0.25 − 0.05)·2·pi/0.001 = 1256.6 rad
        assertThat(faults(winder(WinderMotion.LINE, 0.1, 0.1), new Length(188))).isEmpty();
        assertThat(faults(winder(WinderMotion.SHAFT, 0.1, 0.1), new Angle(1256)))
                .isEmpty();
        refused(
                faults(winder(WinderMotion.LINE, 0.1, 0.1), new Length(189)),
                "/cycle/segments/1",
                FaultCode.OUT_OF_RANGE);
        refused(
                faults(winder(WinderMotion.SHAFT, 0.1, 0.1), new Angle(-1)),
                "/cycle/segments/1",
                FaultCode.OUT_OF_RANGE);
        refused(faults(winder(WinderMotion.LINE, 0.6, 0.6)), "/mechanism/fullDiameter", FaultCode.INCONSISTENT);
        refused(faults(winder(WinderMotion.LINE, 0.1, 0.05)), "/mechanism/startDiameter", FaultCode.INCONSISTENT);
        Segment loaded = new Dwell(new Time(1), new Mass(1), null, false);
        refused(
                MechanismCheck.faults(axis(winder(WinderMotion.LINE, 0.1, 0.1), List.of(loaded)), "/axes/0"),
                "/cycle/segments/0/payload",
                FaultCode.INCONSISTENT);
    }

    private static Custom custom(boolean repeats, double second, double last) {
        return new Custom(
                List.of(point(0, 1), point(second, 2), point(3, last)),
                TableInterpolation.LINEAR,
                repeats,
                new Angle(1),
                null);
    }

    private static CustomPoint point(double angle, double torque) {
        return new CustomPoint(new Angle(angle), new Torque(torque), new Inertia(0.1));
    }

    @Test
    void tables() {
        assertThat(faults(custom(false, 1, 5), new Angle(2), new Angle(-3))).isEmpty();
        assertThat(faults(custom(true, 1, 1), new Angle(200))).isEmpty();
        refused(faults(custom(false, 3, 5)), "/mechanism/points/2/angle", FaultCode.INCONSISTENT);
        refused(faults(custom(false, 1, 5), new Angle(2.1)), "/cycle/segments/1", FaultCode.OUT_OF_RANGE);
        refused(faults(custom(true, 1, 5)), "/mechanism/points/2", FaultCode.INCONSISTENT);
        refused(faults(custom(true, 1, 1), new Angle(601)), "/cycle", FaultCode.OUT_OF_RANGE);
    }

    private static Custom course(double second, double inertia) {
        return new Custom(
                List.of(
                        new CustomInstant(new Time(1), new Torque(1), new Inertia(0.1)),
                        new CustomInstant(new Time(second), new Torque(2), new Inertia(inertia))),
                null,
                null);
    }

    /** Over the angle or over time, not both, and a course ends within its cycle of 4 s. */
    @Test
    void coursesOverTime() {
        Custom course = course(4, 0.2);
        assertThat(faults(axis(course, List.of(outAndBack(1))))).isEmpty();
        refused(
                faults(axis(course(4.1, 0.2), List.of(outAndBack(1)))),
                "/mechanism/instants/1/time",
                FaultCode.OUT_OF_RANGE);
        refused(
                faults(axis(course(1, 0.2), List.of(outAndBack(1)))),
                "/mechanism/instants/1/time",
                FaultCode.INCONSISTENT);
        refused(
                faults(axis(Copies.with(course, "startAngle", new Angle(1)), List.of(outAndBack(1)))),
                "/mechanism/startAngle",
                FaultCode.INCONSISTENT);
        Custom both = Copies.with(course, "points", custom(false, 1, 5).points());
        refused(faults(axis(both, List.of(outAndBack(1)))), "/mechanism/instants", FaultCode.INCONSISTENT);
        Custom neither = Copies.with(course, "instants", null);
        refused(faults(axis(neither, List.of(outAndBack(1)))), "/mechanism/points", FaultCode.MISSING);
    }

    /** A shaft that never rests would have to jump from one inertia to another between its cycles. */
    @Test
    void anInertiaDoesNotJumpWhileTheShaftTurns() {
        Segment turning = new Run(new AngularSpeed(10), new Time(4), null, null, null);
        refused(
                faults(axis(course(4, 0.2), List.of(turning))),
                "/mechanism/instants/1/inertia",
                FaultCode.INCONSISTENT);
        assertThat(faults(axis(course(4, 0.1), List.of(turning)))).isEmpty();
    }

    @Test
    void unbalancedTables() {
        var unbalance = new Unbalance(new Mass(1), new Length(0.1), new Angle(1), new Angle(0));
        assertThat(faults(new DirectDrive(new Inertia(1), null, null, null), new Angle(2000)))
                .isEmpty();
        refused(
                faults(new DirectDrive(new Inertia(1), null, unbalance, null), new Angle(2000)),
                "/cycle",
                FaultCode.OUT_OF_RANGE);
        refused(
                faults(new RotaryTable(new Inertia(1), new Torque(0), 1, null, unbalance, null), new Angle(2000)),
                "/cycle",
                FaultCode.OUT_OF_RANGE);
    }

    private static SpeedCourse outAndBack(double speed) {
        return new SpeedCourse(
                List.of(
                        new SpeedPoint(new Time(0), new AngularSpeed(0)),
                        new SpeedPoint(new Time(1), new AngularSpeed(speed)),
                        new SpeedPoint(new Time(3), new AngularSpeed(-speed)),
                        new SpeedPoint(new Time(4), new AngularSpeed(0))),
                null,
                null);
    }

    /** The table ends 2 rad beyond its start; a course that comes back goes that far and no farther, or farther. */
    @Test
    void theFarthestPlaceWithinASegmentCounts() {
        Segment within = outAndBack(1.9);
        Segment beyond = outAndBack(2.1);
        assertThat(faults(axis(custom(false, 1, 5), List.of(within)))).isEmpty();
        refused(
                faults(axis(custom(false, 1, 5), List.of(within, beyond))),
                "/cycle/segments/1",
                FaultCode.OUT_OF_RANGE);
    }

    @Test
    void runsCountAsTurns() {
        AngularSpeed speed = new AngularSpeed(10);
        refused(
                faults(axis(crank(0.1, null), List.of(new Run(speed, new Time(126), null, null, null)))),
                "/cycle",
                FaultCode.OUT_OF_RANGE);
        assertThat(faults(axis(crank(0.1, null), List.of(new Run(speed, new Time(125), null, null, null)))))
                .isEmpty();
    }

    /** A course of the motor counts at the mechanism's shaft: 3 rad here, 1 rad behind a gear of 3. */
    @Test
    void aCourseOfTheMotorCountsBehindTheGears() {
        var course = new TorqueCourse(
                List.of(
                        new TorquePoint(new Time(0), new AngularSpeed(0), new Torque(1)),
                        new TorquePoint(new Time(1), new AngularSpeed(3), new Torque(1)),
                        new TorquePoint(new Time(2), new AngularSpeed(0), new Torque(1))),
                TorquePlace.MOTOR_SHAFT,
                null);
        refused(faults(axis(custom(false, 1, 5), List.of(course))), "/cycle/segments/0", FaultCode.OUT_OF_RANGE);
        assertThat(faults(axis(custom(false, 1, 5), List.of(new Gear(3, 1, null, new Inertia(0))), List.of(course))))
                .isEmpty();
    }

    /** 10 mm of material, 2 mm a turn, over the core: 5 turns back and it is empty. */
    @Test
    void aRollUnwoundByTheMotorEnds() {
        for (double turns : new double[] {4.9, 5.1}) {
            var course = new TorqueCourse(
                    List.of(
                            new TorquePoint(new Time(0), new AngularSpeed(0), new Torque(1)),
                            new TorquePoint(new Time(1), new AngularSpeed(-turns * 2 * Math.PI), new Torque(1)),
                            new TorquePoint(new Time(2), new AngularSpeed(0), new Torque(1))),
                    TorquePlace.MOTOR_SHAFT,
                    null);
            var roll = new Winder(
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
            assertThat(faults(axis(roll, List.of(course)))).hasSize(turns < 5 ? 0 : 1);
        }
    }
}
