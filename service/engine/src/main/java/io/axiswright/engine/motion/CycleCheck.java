package io.axiswright.engine.motion;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Jog;
import io.axiswright.engine.design.MechanismCheck;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.PositionCourse;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Wording;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Speed;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Whether the segments of a cycle can be run through: each has a motion, each starts at the speed the one before ends at, and
 * none leads beyond the ends of the mechanism.
 */
public final class CycleCheck {

    /** Speeds typed in decimals meet to this share. */
    private static final double ROUNDING = 1e-6;

    private CycleCheck() {}

    /**
     * The faults of all axes of a design.
     *
     * @param design the design
     * @param pointerPrefix JSON Pointer to it in the document it came in
     */
    public static List<Fault> faults(Design design, String pointerPrefix) {
        List<Fault> faults = new ArrayList<>();
        for (int k = 0; k < design.axes().size(); k++) {
            faults.addAll(faults(design.axes().get(k), pointerPrefix + "/axes/" + k));
        }
        return faults;
    }

    /** The faults of the cycle of an axis that stands at the given JSON Pointer. */
    public static List<Fault> faults(Axis axis, String pointer) {
        List<Segment> segments = axis.cycle().segments();
        List<Fault> faults = new ArrayList<>();
        List<@Nullable Motion> motions = new ArrayList<>();
        for (int k = 0; k < segments.size(); k++) {
            motions.add(SegmentMotion.of(segments.get(k), place(pointer, k), faults));
        }
        for (int k = 0; k < segments.size(); k++) {
            int before = (k + segments.size() - 1) % segments.size();
            Motion one = motions.get(before);
            Motion two = motions.get(k);
            if (one != null && two != null) {
                joint(segments, before, k, one, two, place(pointer, k), faults);
            }
        }
        List<Motion> all = motions.stream().filter(Objects::nonNull).toList();
        if (all.size() == motions.size() && MechanismCheck.faults(axis, pointer).isEmpty()) {
            faults.addAll(ReachCheck.faults(axis, all, pointer));
        }
        return faults;
    }

    private static String place(String pointer, int segment) {
        return pointer + "/cycle/segments/" + segment;
    }

    private static void joint(
            List<Segment> segments, int before, int k, Motion one, Motion two, String pointer, List<Fault> faults) {
        double ends = one.endSpeed();
        double starts = two.startSpeed();
        double peak = Math.max(peak(one), peak(two));
        if (atMotor(segments.get(before)) != atMotor(segments.get(k))
                && Math.max(Math.abs(ends), Math.abs(starts)) > ROUNDING * peak) {
            faults.add(new Fault(
                    pointer,
                    FaultCode.INCONSISTENT,
                    "a course taken at the motor shaft joins a segment of the load in motion",
                    "rest where they join"));
        } else if (Math.abs(ends - starts) > ROUNDING * peak) {
            boolean angular = atMotor(segments.get(k)) || rotary(segments.get(k)) || rotary(segments.get(before));
            faults.add(new Fault(
                    pointer,
                    FaultCode.INCONSISTENT,
                    "it starts at " + speed(starts, angular) + ", but the segment before ends at "
                            + speed(ends, angular),
                    "a segment that starts at " + speed(ends, angular) + ", or a ramp between them"));
        }
    }

    private static boolean atMotor(Segment segment) {
        return segment instanceof TorqueCourse course && course.at() == TorquePlace.MOTOR_SHAFT;
    }

    private static boolean rotary(Segment segment) {
        return switch (segment) {
            case Run run -> run.speed() instanceof AngularSpeed;
            case Ramp ramp -> ramp.startSpeed() instanceof AngularSpeed || ramp.endSpeed() instanceof AngularSpeed;
            case SpeedCourse course -> course.points().getFirst().speed() instanceof AngularSpeed;
            case TorqueCourse course -> course.points().getFirst().speed() instanceof AngularSpeed;
            case PositionCourse course -> course.points().getFirst().position() instanceof Angle;
            case Move move -> move.distance() instanceof Angle;
            case Jog jog -> jog.speed() instanceof AngularSpeed;
            case Dwell dwell -> false;
        };
    }

    private static String speed(double value, boolean angular) {
        return Wording.of(angular ? new AngularSpeed(value) : new Speed(value));
    }

    private static double peak(Motion motion) {
        double peak = 0;
        for (Motion.Stretch stretch : motion.stretches()) {
            peak = Math.max(peak, stretch.speed().largestMagnitude(0, stretch.length()));
        }
        return peak;
    }
}
