package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the braking study takes.
 *
 * @param mains the supply at the machine's terminals
 * @param ambient highest air temperature at the braking resistors
 * @param altitude altitude of the site; not above 1000 m if absent
 * @param axes the axes with their drive units and courses
 * @param zones the stop zones the axes name
 * @param brakingUnits the braking units that may be used, at most one on each DC bus
 * @param timeCourses asks for the course of every bus over time; none is drawn if absent
 * @param unaidedStops whether to look for all times within which stop zones could decelerate without a braking unit, which takes
 *     many times as long as the rest
 */
public record BrakingRequest(
        Mains mains,
        @Bounds(min = 233.15, max = 343.15) Temperature ambient,
        @Nullable Length altitude,
        List<BrakingAxis> axes,
        List<StopZone> zones,
        List<BrakingUnit> brakingUnits,
        @Nullable TimeCourses timeCourses,
        boolean unaidedStops) {

    /** Keeps the lists from being changed. */
    public BrakingRequest {
        axes = List.copyOf(axes);
        zones = List.copyOf(zones);
        brakingUnits = List.copyOf(brakingUnits);
    }

    /** A request that draws nothing. */
    public BrakingRequest(
            Mains mains,
            Temperature ambient,
            List<BrakingAxis> axes,
            List<StopZone> zones,
            List<BrakingUnit> brakingUnits) {
        this(mains, ambient, null, axes, zones, brakingUnits, null, false);
    }

    /** The same request, which looks for all times that need no braking unit. */
    public BrakingRequest withUnaidedStops() {
        return new BrakingRequest(mains, ambient, altitude, axes, zones, brakingUnits, timeCourses, true);
    }

    /** A request for some of its axes alone, with no more than these follow from. */
    BrakingRequest alone(List<BrakingAxis> some) {
        return new BrakingRequest(
                mains,
                ambient,
                altitude,
                some,
                zones.stream()
                        .filter(zone -> some.stream().anyMatch(axis -> zone.id().equals(axis.stopZone())))
                        .toList(),
                brakingUnits,
                timeCourses,
                unaidedStops);
    }
}
