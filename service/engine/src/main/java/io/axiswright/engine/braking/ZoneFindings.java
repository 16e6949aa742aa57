package io.axiswright.engine.braking;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import java.util.ArrayList;
import java.util.List;

/** What must be said about uncontrolled stops: nothing flows to the bus, and nothing but friction and brakes stops the load. */
final class ZoneFindings {

    private static final String CLAUSE = "IEC 60204-1:2016 9.2.2";

    private ZoneFindings() {}

    static List<Finding> of(BrakingRequest request) {
        List<Finding> findings = new ArrayList<>();
        for (StopZone zone : request.zones()) {
            if (zone.category() == StopCategory.CATEGORY_0) {
                request.axes().stream()
                        .filter(axis -> zone.id().equals(axis.stopZone()))
                        .map(ZoneFindings::coasting)
                        .forEach(findings::add);
            }
        }
        return findings;
    }

    private static Finding coasting(BrakingAxis axis) {
        return axis.brakeEngageDelay() == null
                ? FindingCode.BRAKING_STOP_WITHOUT_BRAKE.at(axis.id(), axis.pointer(), CLAUSE, null, null)
                : FindingCode.BRAKING_STOP_UNCONTROLLED.at(
                        axis.id(), axis.pointer(), CLAUSE, axis.brakeEngageDelay(), null);
    }
}
