package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularJerk;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether a segment states lengths where its load goes in a line, and angles where it turns. */
public final class MeasureKinds {

    private final boolean rotary;
    private final boolean turned;
    private final List<Fault> faults = new ArrayList<>();

    private MeasureKinds(boolean rotary, boolean turned) {
        this.rotary = rotary;
        this.turned = turned;
    }

    /**
     * The measures of the other kind.
     *
     * @param segment the segment
     * @param rotary whether its motion is stated in angles
     * @param turned whether its load is stated by inertia and torque
     * @param pointer JSON Pointer to the segment
     */
    public static List<Fault> faults(Segment segment, boolean rotary, boolean turned, String pointer) {
        MeasureKinds kinds = new MeasureKinds(rotary, turned);
        switch (segment) {
            case Move move -> {
                kinds.check(move.distance(), pointer + "/distance");
                kinds.check(move.topSpeed(), pointer + "/topSpeed");
                kinds.check(move.acceleration(), pointer + "/acceleration");
                kinds.check(move.deceleration(), pointer + "/deceleration");
                kinds.check(move.jerk(), pointer + "/jerk");
            }
            case Dwell dwell -> {}
            case Run run -> {
                kinds.check(run.speed(), pointer + "/speed");
                kinds.check(run.distance(), pointer + "/distance");
            }
            case Ramp ramp -> {
                kinds.check(ramp.startSpeed(), pointer + "/startSpeed");
                kinds.check(ramp.endSpeed(), pointer + "/endSpeed");
                kinds.check(ramp.distance(), pointer + "/distance");
                kinds.check(ramp.acceleration(), pointer + "/acceleration");
            }
            case Jog jog -> {
                kinds.check(jog.speed(), pointer + "/speed");
                kinds.leg(jog.starting(), pointer + "/starting");
                kinds.leg(jog.running(), pointer + "/running");
                kinds.leg(jog.stopping(), pointer + "/stopping");
            }
            case PositionCourse course -> {
                for (int k = 0; k < course.points().size(); k++) {
                    kinds.check(course.points().get(k).position(), pointer + "/points/" + k + "/position");
                }
                kinds.check(course.startSpeed(), pointer + "/startSpeed");
                kinds.check(course.endSpeed(), pointer + "/endSpeed");
            }
            case SpeedCourse course -> {
                for (int k = 0; k < course.points().size(); k++) {
                    kinds.check(course.points().get(k).speed(), pointer + "/points/" + k + "/speed");
                }
            }
            case TorqueCourse course -> kinds.torques(course, pointer);
        }
        kinds.check(segment.payload(), turned, pointer + "/payload");
        kinds.check(segment.processEffort(), turned, pointer + "/processEffort");
        return kinds.faults;
    }

    private void leg(Leg leg, String pointer) {
        check(leg.distance(), pointer + "/distance");
        check(leg.acceleration(), pointer + "/acceleration");
    }

    /** The motor's shaft turns whatever the load does. */
    private void torques(TorqueCourse course, String pointer) {
        boolean atMotor = course.at() == TorquePlace.MOTOR_SHAFT;
        for (int k = 0; k < course.points().size(); k++) {
            TorquePoint point = course.points().get(k);
            check(point.speed(), rotary || atMotor, pointer + "/points/" + k + "/speed");
            check(point.effort(), turned || atMotor, pointer + "/points/" + k + "/effort");
        }
    }

    private void check(@Nullable Quantity quantity, String pointer) {
        check(quantity, rotary, pointer);
    }

    private void check(@Nullable Quantity quantity, boolean wanted, String pointer) {
        if (quantity != null && turning(quantity) != wanted) {
            faults.add(new Fault(
                    pointer,
                    FaultCode.WRONG_UNIT,
                    wanted
                            ? "This turns, but " + kind(quantity, false) + " is given."
                            : "The mechanism moves its load in a line, but " + kind(quantity, true) + " is given.",
                    kind(quantity, wanted)));
        }
    }

    private static boolean turning(Quantity quantity) {
        return switch (quantity) {
            case Angle _, AngularSpeed _, AngularAcceleration _, AngularJerk _, Inertia _, Torque _ -> true;
            default -> false;
        };
    }

    private static String kind(Quantity quantity, boolean turning) {
        return switch (quantity.dimension()) {
            case LENGTH, ANGLE -> turning ? "an angle" : "a length";
            case SPEED, ANGULAR_SPEED -> turning ? "an angular speed" : "a speed";
            case LINEAR_ACCELERATION, ANGULAR_ACCELERATION ->
                turning ? "an angular acceleration" : "an acceleration in a line";
            case LINEAR_JERK, ANGULAR_JERK -> turning ? "an angular jerk" : "a jerk in a line";
            case MASS, INERTIA -> turning ? "a moment of inertia" : "a mass";
            default -> turning ? "a torque" : "a force";
        };
    }
}
