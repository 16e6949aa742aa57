package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What an axis must not contradict itself in. */
final class AxisCheck {

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
        faults.addAll(MeasureKinds.faults(
                segment, axis.mechanism().movesByAngle(), !axis.mechanism().carriesMass(), pointer));
        if (segment instanceof Dwell dwell) {
            brake(dwell, pointer + "/brakeHolds");
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
