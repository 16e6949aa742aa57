package io.axiswright.engine.stopping;

import io.axiswright.engine.design.Safeguard;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.duty.LimitUse;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One stop zone.
 *
 * @param index its place in the design
 * @param zone the zone
 * @param axes its axes
 * @param stopping how it comes to rest
 * @param safeguards the studies of its safeguards
 */
record ZoneStudy(
        int index, StopZone zone, List<StoppingAxis> axes, ZoneStopping stopping, List<SafeguardStudy> safeguards) {

    static ZoneStudy of(int index, StopZone zone, List<StoppingAxis> axes) {
        double reaction = zone.reactionTime().si();
        List<AxisStopping> stops = axes.stream()
                .map(axis -> zone.category() == StopCategory.CATEGORY_0
                        ? new UncontrolledStop(axis).worst(reaction).stopping()
                        : new ControlledStop(axis, zone.decelerationTime().si()).worst(reaction))
                .toList();
        List<SafeguardStudy> safeguards = (zone.safeguards() == null ? List.<Safeguard>of() : zone.safeguards())
                .stream().map(SafeguardStudy::of).toList();
        Time time = slowest(zone, stops);
        return new ZoneStudy(
                index,
                zone,
                axes,
                new ZoneStopping(
                        zone.id(),
                        zone.category(),
                        time,
                        stops,
                        safeguards.stream().map(s -> s.distance(time)).toList()),
                safeguards);
    }

    private static @Nullable Time slowest(StopZone zone, List<AxisStopping> stops) {
        if (stops.stream().anyMatch(stop -> stop.stoppingTime() == null)) {
            return null;
        }
        Time planned = zone.plannedStop();
        if (planned != null) {
            return planned;
        }
        double slowest = stops.stream()
                .map(AxisStopping::stoppingTime)
                .filter(Objects::nonNull)
                .mapToDouble(Quantity::si)
                .max()
                .orElse(zone.reactionTime().si());
        return new Time(slowest);
    }

    /** What must be said of axes whose drive units cannot stop them in the time of the zone. */
    List<Finding> tooHard() {
        List<Finding> findings = new ArrayList<>();
        for (StoppingAxis axis : axes) {
            LimitUse stop = axis.hardestStop();
            if (stop != null && stop.broken() && zone.category() != StopCategory.CATEGORY_0) {
                findings.add(stop.stopTooHard(axis.id(), axis.pointer()));
            }
        }
        return findings;
    }

    /** JSON Pointer to one of its safeguards. */
    String pointer(int safeguard) {
        return "/design/stopZones/" + index + "/safeguards/" + safeguard;
    }
}
