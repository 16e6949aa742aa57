package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.motion.Motion;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Speed;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/** What is to be said about single segments of a cycle. */
final class CycleFindings {

    private CycleFindings() {}

    /**
     * About one axis.
     *
     * @param axis the axis
     * @param pointer JSON Pointer to its segments, with the slash
     * @param rotary whether its load turns
     */
    static List<Finding> of(Axis axis, String pointer, boolean rotary) {
        List<Segment> segments = axis.cycle().segments();
        List<Finding> findings = new ArrayList<>();
        for (int k = 0; k < segments.size(); k++) {
            Segment segment = segments.get(k);
            Motion motion = Motion.of(segment);
            if (segment instanceof Move move && move.topSpeed() != null && motion.belowTopSpeed()) {
                double peak = motion.stretches().stream()
                        .mapToDouble(stretch -> stretch.speed().largestMagnitude(0, stretch.length()))
                        .max()
                        .orElse(0);
                findings.add(FindingCode.DUTY_TOP_SPEED_UNREACHED.at(
                        axis.id(),
                        pointer + k + "/topSpeed",
                        "derived: v = sqrt(2·a·b·s/(a + b)) of a triangle",
                        speed(peak, rotary),
                        speed(Math.abs(move.topSpeed().si()), rotary)));
            }
            Segment before = segments.get((k + segments.size() - 1) % segments.size());
            if (motion.startSpeed() != 0 && carried(before) != carried(segment)) {
                findings.add(FindingCode.DUTY_PAYLOAD_SWITCHED_MOVING.at(
                        axis.id(),
                        pointer + k + (segment.payload() == null ? "" : "/payload"),
                        "derived: conservation of momentum",
                        speed(Math.abs(motion.startSpeed()), rotary || atMotor(segment)),
                        null));
            } else if (carried(before) != carried(segment)
                    && motion.travelled() > 0
                    && Motion.of(before).travelled() > 0) {
                double change = Math.abs(carried(before) - carried(segment));
                findings.add(FindingCode.DUTY_PAYLOAD_SWITCHED_AT_ONCE.at(
                        axis.id(),
                        pointer + k + (segment.payload() == null ? "" : "/payload"),
                        "derived: the payload is another at the end of one motion and at the start of the next",
                        payload(axis, change),
                        null));
            }
        }
        neverPutDown(axis, pointer, findings);
        return findings;
    }

    /** Where a cycle ends it begins, so all that is picked up is put down; unless something is always carried, and not always the same. */
    private static void neverPutDown(Axis axis, String pointer, List<Finding> findings) {
        DoubleSummaryStatistics carried = axis.cycle().segments().stream()
                .mapToDouble(CycleFindings::carried)
                .summaryStatistics();
        if (carried.getMin() > 0 && carried.getMax() > carried.getMin()) {
            findings.add(FindingCode.DUTY_PAYLOAD_NEVER_PUT_DOWN.at(
                    axis.id(),
                    pointer.substring(0, pointer.length() - 1),
                    "derived: the least and the largest payload of all segments",
                    payload(axis, carried.getMin()),
                    payload(axis, carried.getMax())));
        }
    }

    private static Quantity payload(Axis axis, double value) {
        return axis.mechanism().carriesMass() ? new Mass(value) : new Inertia(value);
    }

    private static boolean atMotor(Segment segment) {
        return segment instanceof TorqueCourse course && course.at() == TorquePlace.MOTOR_SHAFT;
    }

    private static double carried(Segment segment) {
        Payload payload = segment.payload();
        return payload == null ? 0 : payload.si();
    }

    private static Quantity speed(double value, boolean rotary) {
        return rotary ? new AngularSpeed(value) : new Speed(value);
    }
}
