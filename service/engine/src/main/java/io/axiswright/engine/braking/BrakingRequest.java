package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;

/**
 * What the braking study takes.
 *
 * @param mains the supply at the machine's terminals
 * @param ambient highest air temperature at the braking resistors
 * @param axes the axes with their drive units and courses
 * @param zones the stop zones the axes name
 * @param brakingUnits the braking units that may be used, at most one on each DC bus
 */
public record BrakingRequest(
        Mains mains,
        @Bounds(min = 233.15, max = 343.15) Temperature ambient,
        List<BrakingAxis> axes,
        List<StopZone> zones,
        List<BrakingUnit> brakingUnits) {

    /** Keeps the lists from being changed. */
    public BrakingRequest {
        axes = List.copyOf(axes);
        zones = List.copyOf(zones);
        brakingUnits = List.copyOf(brakingUnits);
    }
}
