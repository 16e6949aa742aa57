package io.axiswright.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Cycle;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Jog;
import io.axiswright.engine.design.Leg;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Cycles that can and cannot be run through. */
class CycleCheckTest {

    private static final Length ZERO = new Length(0);

    private static List<Fault> faults(Segment... segments) {
        return CycleCheck.faults(
                new Axis(
                        "a",
                        null,
                        new RotaryTable(new Inertia(1), new Torque(0), 1, null),
                        List.of(),
                        null,
                        new Cycle(List.of(segments)),
                        new Position(ZERO, ZERO, ZERO),
                        null,
                        null,
                        new Frequency(1),
                        DriveWish.any(),
                        null),
                "");
    }

    private static Ramp ramp(double from, double to) {
        return new Ramp(new AngularSpeed(from), new AngularSpeed(to), new Time(1), null, null, null, null, null);
    }

    private static Run run(double speed) {
        return new Run(new AngularSpeed(speed), new Time(1), null, null, null);
    }

    private static Leg leg(@Nullable Double time, @Nullable Double angle, @Nullable Double acceleration) {
        return new Leg(
                time == null ? null : new Time(time),
                angle == null ? null : new Angle(angle),
                acceleration == null ? null : new AngularAcceleration(acceleration));
    }

    @Test
    void leadInRunAndLeadOutJoin() {
        assertThat(faults(ramp(0, 2), run(2), ramp(2, 0), new Dwell(new Time(1), null, null, false)))
                .isEmpty();
        assertThat(faults(ramp(-1, 2), run(2), ramp(2, -1), run(-1))).isEmpty();
        assertThat(faults(run(3))).isEmpty();
    }

    @Test
    void aJumpOfSpeedIsNamedWithBothValues() {
        List<Fault> faults = faults(ramp(0, 2), run(2.5), ramp(2.5, 0));
        assertThat(faults).extracting(Fault::pointer).containsExactly("/cycle/segments/1");
        assertThat(faults.getFirst().detail()).contains("2.5 rad/s", "2 rad/s");
        assertThat(faults(run(2), new Move(new Angle(1), new Time(1), new Triangular(), null, null)))
                .extracting(Fault::pointer)
                .containsExactly("/cycle/segments/0", "/cycle/segments/1");
    }

    @Test
    void aCourseOfTheMotorJoinsAtRestOnly() {
        var points = List.of(
                new TorquePoint(new Time(0), new AngularSpeed(2), new Torque(1)),
                new TorquePoint(new Time(1), new AngularSpeed(2), new Torque(1)));
        var atMotor = new TorqueCourse(points, TorquePlace.MOTOR_SHAFT, null);
        assertThat(faults(atMotor)).isEmpty();
        assertThat(faults(atMotor, run(2)))
                .extracting(Fault::pointer)
                .containsExactly("/cycle/segments/0", "/cycle/segments/1");
        assertThat(faults(new TorqueCourse(points, TorquePlace.LOAD, null), run(2)))
                .isEmpty();
    }

    @Test
    void runsAndRampsSayNeitherTooMuchNorTooLittle() {
        AngularSpeed two = new AngularSpeed(2);
        assertThat(faults(new Run(two, null, null, null, null))).hasSize(1);
        assertThat(faults(new Run(two, new Time(1), new Angle(1), null, null))).hasSize(1);
        assertThat(faults(new Run(two, null, new Angle(-1), null, null)))
                .extracting(Fault::pointer)
                .containsExactly("/cycle/segments/0/distance");
        assertThat(faults(new Run(new AngularSpeed(0), new Time(1), null, null, null)))
                .extracting(Fault::pointer)
                .containsExactly("/cycle/segments/0/speed");
        assertThat(faults(new Ramp(two, two, null, null, new AngularAcceleration(1), null, null, null)))
                .hasSize(1);
        assertThat(faults(new Jog(two, leg(1.0, null, null), leg(null, null, 1.0), leg(null, null, null), null, null)))
                .extracting(Fault::pointer)
                .containsExactly("/cycle/segments/0/running", "/cycle/segments/0/stopping");
    }

    /** 2 rad/s at 4 rad/s² takes 0.5 s and 0.5 rad; 3 rad at speed 1.5 s; a stop in 1 rad takes 1 s. */
    @Test
    void aJogWithAStatedStop() {
        var jog = new Jog(
                new AngularSpeed(2), leg(null, null, 4.0), leg(null, 3.0, null), leg(null, 1.0, null), null, null);
        Motion motion = Motion.of(jog);
        assertThat(motion.duration()).isCloseTo(3, within(1e-12));
        assertThat(motion.travel()).isCloseTo(4.5, within(1e-12));
        assertThat(motion.startSpeed()).isZero();
        assertThat(motion.endSpeed()).isCloseTo(0, within(1e-12));
        assertThat(motion.stretches()).hasSize(3).allMatch(stretch -> stretch.direction() == 1);
    }
}
