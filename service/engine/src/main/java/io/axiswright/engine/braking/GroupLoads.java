package io.axiswright.engine.braking;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Everything one DC bus is put through.
 *
 * @param cycle the cycles of its axes
 * @param stops the controlled stops of its stop zones; axes outside the zone are taken as idle
 */
record GroupLoads(CycleLoad cycle, List<StopLoad> stops) {

    /** The loads of the axes of one bus. */
    static GroupLoads of(List<BrakingAxis> axes, List<StopZone> zones, boolean losses) {
        List<PowerCourse> courses = axes.stream()
                .filter(axis -> axis.course().duration() > 0)
                .map(axis -> losses
                        ? PowerCourse.withLosses(axis.course(), axis.driveUnit())
                        : PowerCourse.withoutLosses(axis.course()))
                .toList();
        return new GroupLoads(CommonPeriod.load(courses), stops(axes, zones, losses));
    }

    /** Every case on a bus, the cycle first; the stops start from its worst state. */
    GroupRun on(Bus bus, Chopper chopper) {
        CycleOutcome cycleOutcome = cycle.on(bus, chopper);
        List<CaseOutcome> all = new ArrayList<>();
        all.add(cycleOutcome.outcome());
        for (StopLoad stop : stops) {
            all.add(stop.on(bus, chopper, cycleOutcome.outcome()));
        }
        return new GroupRun(cycleOutcome.basis(), all);
    }

    private static List<StopLoad> stops(List<BrakingAxis> axes, List<StopZone> zones, boolean losses) {
        List<StopLoad> loads = new ArrayList<>();
        List<List<StopCandidate>> every = new ArrayList<>();
        int controlled = 0;
        for (StopZone zone : zones) {
            if (zone.category() == StopCategory.CATEGORY_0) {
                continue;
            }
            List<List<StopCandidate>> ofZone = axes.stream()
                    .filter(axis ->
                            zone.id().equals(axis.stopZone()) && !axis.stops().isEmpty())
                    .map(axis -> candidates(axis, losses))
                    .toList();
            if (!ofZone.isEmpty()) {
                controlled++;
                every.addAll(ofZone);
                addWorst(CaseKind.STOP_ZONE, zone.id(), ofZone, loads);
            }
        }
        if (controlled > 1) {
            addWorst(CaseKind.STOP_ALL, null, every, loads);
        }
        return loads;
    }

    private static List<StopCandidate> candidates(BrakingAxis axis, boolean losses) {
        return axis.stops().stream()
                .map(stop -> losses
                        ? PowerCourse.withLosses(stop.course(), axis.driveUnit())
                        : PowerCourse.withoutLosses(stop.course()))
                .map(StopCandidate::of)
                .toList();
    }

    private static void addWorst(
            CaseKind kind, @Nullable String zone, List<List<StopCandidate>> axes, List<StopLoad> loads) {
        List<PowerCourse> energy = worst(axes, StopCriterion.MOST_ENERGY);
        List<PowerCourse> power = worst(axes, StopCriterion.MOST_POWER);
        loads.add(new StopLoad(kind, zone, StopCriterion.MOST_ENERGY, BusPower.once(energy)));
        if (!power.equals(energy)) {
            loads.add(new StopLoad(kind, zone, StopCriterion.MOST_POWER, BusPower.once(power)));
        }
    }

    private static List<PowerCourse> worst(List<List<StopCandidate>> axes, StopCriterion criterion) {
        return axes.stream()
                .map(candidates -> StopCandidate.worst(candidates, criterion))
                .flatMap(Optional::stream)
                .map(StopCandidate::power)
                .toList();
    }
}
