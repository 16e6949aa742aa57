package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.duty.DutyResult;
import java.util.HashSet;
import java.util.Set;

/** The bus groups that at least one drive unit on the mains feeds. */
final class FedBuses {

    private final Set<String> fed = new HashSet<>();

    FedBuses(Design design, Stock stock, DutyResult duty) {
        for (int k = 0; k < design.axes().size(); k++) {
            String bus = design.axes().get(k).busGroup();
            DriveUnit unit = stock.find(DriveUnit.class, duty.axes().get(k).driveUnit());
            if (unit != null && unit.feed() != Feed.DC_BUS && bus != null) {
                fed.add(bus);
            }
        }
    }

    /** Whether the drive unit of an axis gets its power, from the mains or from a bus that is fed. */
    boolean feed(Axis axis, DriveUnit unit) {
        return unit.feed() != Feed.DC_BUS || (axis.busGroup() != null && fed.contains(axis.busGroup()));
    }
}
