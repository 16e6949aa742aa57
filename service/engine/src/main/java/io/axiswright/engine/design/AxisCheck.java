package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What an axis must not contradict itself in. */
final class AxisCheck {

    /** Shares typed in decimals need not add up to exactly one in binary. */
    private static final double ROUNDING = 1e-9;

    private final Axis axis;
    private final List<Fault> faults = new ArrayList<>();

    private AxisCheck(Axis axis) {
        this.axis = axis;
    }

    /** The faults of an axis that stands at the given JSON Pointer. */
    static List<Fault> faults(Axis axis, String pointer) {
        var check = new AxisCheck(axis);
        List<Segment> segments = axis.cycle().segments();
        for (int k = 0; k < segments.size(); k++) {
            check.segment(segments.get(k), pointer + "/cycle/segments/" + k);
        }
        check.mounting(axis.mounting(), pointer + "/mounting");
        check.faults.addAll(MechanismCheck.faults(axis, pointer));
        return check.faults;
    }

    private void segment(Segment segment, String pointer) {
        switch (segment) {
            case Move move -> {
                distance(move.distance(), pointer + "/distance");
                law(move.law(), pointer + "/law");
                payload(move.payload(), pointer + "/payload");
                effort(move.processEffort(), pointer + "/processEffort");
            }
            case Dwell dwell -> {
                payload(dwell.payload(), pointer + "/payload");
                effort(dwell.processEffort(), pointer + "/processEffort");
                brake(dwell, pointer + "/brakeHolds");
            }
        }
    }

    private void distance(Displacement distance, String pointer) {
        boolean byAngle = axis.mechanism().movesByAngle();
        boolean angle = switch (distance) {
            case Length _ -> false;
            case Angle _ -> true;
        };
        requireKind(angle, byAngle, pointer, "The moves of this mechanism are stated", "an angle", "a length");
    }

    private void payload(@Nullable Payload payload, String pointer) {
        boolean byMass = axis.mechanism().carriesMass();
        boolean mass = switch (payload) {
            case null -> byMass;
            case Mass _ -> true;
            case Inertia _ -> false;
        };
        requireKind(mass, byMass, pointer, "What this mechanism carries is stated", "a mass", "a moment of inertia");
    }

    private void effort(@Nullable Effort effort, String pointer) {
        boolean byForce = axis.mechanism().carriesMass();
        boolean force = switch (effort) {
            case null -> byForce;
            case Force _ -> true;
            case Torque _ -> false;
        };
        requireKind(force, byForce, pointer, "What resists this mechanism is stated", "a force", "a torque");
    }

    private void requireKind(
            boolean given, boolean wanted, String pointer, String subject, String ofTrue, String ofFalse) {
        if (given != wanted) {
            String accepted = wanted ? ofTrue : ofFalse;
            String stated = given ? ofTrue : ofFalse;
            faults.add(new Fault(
                    pointer,
                    FaultCode.WRONG_UNIT,
                    subject + " as " + accepted + ", but " + stated + " is given.",
                    accepted));
        }
    }

    private void law(MotionLaw law, String pointer) {
        if (law instanceof Trapezoidal(double acceleration, double deceleration)
                && acceleration + deceleration > 1 + ROUNDING) {
            faults.add(new Fault(
                    pointer,
                    FaultCode.INCONSISTENT,
                    "Accelerating and decelerating take more than the whole move: " + acceleration + " + "
                            + deceleration + ".",
                    "shares that add up to at most 1"));
        }
    }

    private void brake(Dwell dwell, String pointer) {
        if (dwell.brakeHolds() && !axis.drive().holdingBrake()) {
            faults.add(new Fault(
                    pointer,
                    FaultCode.INCONSISTENT,
                    "The holding brake is to hold the load, but the drive has none.",
                    "false, or drive.holdingBrake true"));
        }
    }

    private void mounting(@Nullable ShaftMounting mounting, String pointer) {
        if (mounting != null && mounting.kind() == MountingKind.FOOT && mounting.shaftHeight() == null) {
            faults.add(new Fault(
                    pointer + "/shaftHeight",
                    FaultCode.MISSING,
                    "Foot mounting needs the height of the driven shaft.",
                    "the height of the driven shaft above the seat of the feet"));
        }
    }
}
