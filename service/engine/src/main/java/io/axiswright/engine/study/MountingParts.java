package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.duty.LimitUse;
import io.axiswright.engine.mounting.MountedAxis;
import io.axiswright.engine.mounting.MountingRequest;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The axes whose mounting is stated, with the drive units and torques their duty gave. */
final class MountingParts {

    private MountingParts() {}

    static MountingRequest request(StudyRequest request, Stock stock, DutyResult duty) {
        Design design = request.design();
        List<MountedAxis> axes = new ArrayList<>();
        for (int k = 0; k < design.axes().size(); k++) {
            Axis axis = design.axes().get(k);
            AxisDuty axisDuty = duty.axes().get(k);
            DriveUnit unit = stock.find(DriveUnit.class, axisDuty.driveUnit());
            if (axis.mounting() != null && unit != null) {
                HoldingBrake brake = stock.find(HoldingBrake.class, axisDuty.holdingBrake());
                axes.add(new MountedAxis(
                        axis.id(),
                        k,
                        axis.mounting(),
                        unit,
                        axisDuty.figures().peakTorque(),
                        stopTorque(axisDuty),
                        brake == null ? null : brake.torque(),
                        axisDuty.reversing()));
            }
        }
        return new MountingRequest(
                axes, request.catalogue().footKits(), request.catalogue().fasteningParts());
    }

    private static @Nullable Torque stopTorque(AxisDuty duty) {
        LimitUse stop = duty.hardestStop();
        return stop == null ? null : new Torque(stop.value().si());
    }
}
