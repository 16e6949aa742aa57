package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.design.StopZone;
import java.util.List;
import java.util.Set;

/**
 * Axes with what they do, and the drive units to choose among.
 *
 * @param site where the machine stands
 * @param mains what it is supplied from
 * @param axes the axes
 * @param stopZones the stop zones they refer to
 * @param driveUnits the drive units that can be bought
 * @param holdingBrakes the holding brakes that can be bought
 * @param ventilationKits the ventilation kits that can be bought
 * @param gearUnits the gear units that can be bought
 * @param throughTransformer ids of the axes whose drive units get their rated voltage from a transformer
 */
public record DutyRequest(
        Site site,
        Mains mains,
        List<Axis> axes,
        List<StopZone> stopZones,
        List<DriveUnit> driveUnits,
        List<HoldingBrake> holdingBrakes,
        List<VentilationKit> ventilationKits,
        List<GearUnit> gearUnits,
        Set<String> throughTransformer) {

    /** Keeps the lists from being changed. */
    public DutyRequest {
        axes = List.copyOf(axes);
        stopZones = List.copyOf(stopZones);
        driveUnits = List.copyOf(driveUnits);
        holdingBrakes = List.copyOf(holdingBrakes);
        ventilationKits = List.copyOf(ventilationKits);
        gearUnits = List.copyOf(gearUnits);
        throughTransformer = Set.copyOf(throughTransformer);
    }

    /** Axes that are all fed straight from the mains. */
    public DutyRequest(
            Site site,
            Mains mains,
            List<Axis> axes,
            List<StopZone> stopZones,
            List<DriveUnit> driveUnits,
            List<HoldingBrake> holdingBrakes,
            List<VentilationKit> ventilationKits,
            List<GearUnit> gearUnits) {
        this(site, mains, axes, stopZones, driveUnits, holdingBrakes, ventilationKits, gearUnits, Set.of());
    }

    /** A request for one of its axes alone, with no more than that axis follows from. */
    DutyRequest alone(int index) {
        Axis axis = axes.get(index);
        return new DutyRequest(
                site,
                mains,
                List.of(axis),
                stopZones.stream()
                        .filter(zone -> zone.id().equals(axis.stopZone()))
                        .toList(),
                driveUnits,
                holdingBrakes,
                ventilationKits,
                gearUnits,
                throughTransformer.contains(axis.id()) ? Set.of(axis.id()) : Set.of());
    }
}
