package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.stopping.StoppingAxis;
import io.axiswright.engine.stopping.StoppingRequest;
import java.util.ArrayList;
import java.util.List;

/** The axes as the stopping study sees them; of an axis without any drive unit nothing is known. */
final class StoppingParts {

    private StoppingParts() {}

    static StoppingRequest request(Design design, Stock stock, DutyResult duty) {
        List<StoppingAxis> axes = new ArrayList<>();
        for (int k = 0; k < design.axes().size(); k++) {
            Axis axis = design.axes().get(k);
            AxisDuty axisDuty = duty.axes().get(k);
            if (axisDuty.driveUnit() != null) {
                GearUnit gear = stock.find(GearUnit.class, axisDuty.gearUnit());
                axes.add(new StoppingAxis(
                        k,
                        axis.id(),
                        axis.stopZone(),
                        axisDuty.coasting(),
                        stock.find(HoldingBrake.class, axisDuty.holdingBrake()),
                        gear == null ? null : gear.stopTorque(),
                        axisDuty.hardestStop()));
            }
        }
        return new StoppingRequest(axes, design.stopZones());
    }
}
