package io.axiswright.engine.study;

import io.axiswright.engine.braking.BrakingAxis;
import io.axiswright.engine.braking.BrakingRequest;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyResult;
import java.util.ArrayList;
import java.util.List;

/** The axes as the braking study sees them; an axis without any drive unit returns nothing. */
final class BrakingParts {

    private BrakingParts() {}

    static BrakingRequest request(StudyRequest request, Stock stock, DutyResult duty) {
        Design design = request.design();
        Installation installation = design.installation();
        List<BrakingAxis> axes = new ArrayList<>();
        for (int k = 0; k < design.axes().size(); k++) {
            Axis axis = design.axes().get(k);
            AxisDuty axisDuty = duty.axes().get(k);
            DriveUnit unit = stock.find(DriveUnit.class, axisDuty.driveUnit());
            if (unit != null) {
                axes.add(new BrakingAxis(
                        k,
                        axis.id(),
                        axis.busGroup(),
                        axis.stopZone(),
                        unit,
                        axisDuty.course(),
                        axisDuty.stopModel(),
                        installation != null && installation.throughTransformer(axis)));
            }
        }
        return new BrakingRequest(
                design.mains(),
                design.site().enclosureAmbient(),
                design.site().altitude(),
                axes,
                design.stopZones(),
                request.catalogue().brakingUnits(),
                request.timeCourses(),
                false);
    }
}
