package io.axiswright.engine.braking;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Everything one DC bus is put through.
 *
 * @param cycle the cycles of its axes
 * @param stops the controlled stops of its stop zones
 * @param rests the cycles left while a stop zone stands still
 * @param lowering power of all axes that return it at constant speed, running down at once; absent if none does
 */
record GroupLoads(
        CycleLoad cycle,
        List<StopCase> stops,
        List<Rest> rests,
        @Nullable BusPower lowering) {

    /** The cycles of the axes outside a zone. */
    record Rest(String zone, CycleLoad cycle) {}

    /** The loads of the axes of one bus. */
    static GroupLoads of(List<BrakingAxis> axes, List<StopZone> zones, boolean losses) {
        return new Builder(axes, losses).loads(zones);
    }

    /** Every case on a bus, the cycle first. */
    GroupRun on(Bus bus, Chopper chopper) {
        CycleOutcome cycleOutcome = cycle.on(bus, chopper);
        CaseOutcome outcome = cycleOutcome.outcome();
        List<CaseOutcome> all = new ArrayList<>();
        all.add(outcome);
        for (StopCase stop : stops) {
            all.addAll(stop.on(bus, chopper, outcome));
        }
        addRest(bus, chopper, outcome, all);
        return new GroupRun(cycleOutcome.basis(), cycleOutcome.settling(), all);
    }

    /** Whether the bus stays under its trip voltage in every case: no more is worked out than that. */
    boolean fit(Bus bus, Chopper chopper) {
        CaseOutcome outcome = cycle.on(bus, chopper).outcome();
        List<CaseOutcome> others = new ArrayList<>();
        addRest(bus, chopper, outcome, others);
        return outcome.fits(bus)
                && others.stream().allMatch(other -> other.fits(bus))
                && stops.stream().allMatch(stop -> stop.fits(bus, chopper, outcome));
    }

    /**
     * The same at a lower line voltage. Without a braking unit the energy above the rectifier's is the same at every line as
     * long as no stop starts from a tripped bus; with one the bus is at least nowhere higher.
     *
     * @param first the cases at the first line
     * @param high the bus at the first line
     */
    GroupRun again(GroupRun first, Bus high, Bus bus, Chopper chopper) {
        CycleOutcome cycleOutcome = cycle.on(bus, chopper);
        CaseOutcome outcome = cycleOutcome.outcome();
        boolean shifts =
                !chopper.present() && first.cycle().peakEnergy() < Math.max(high.tripEnergy(), high.floorEnergy());
        double lower = shifts ? high.floorEnergy() - bus.floorEnergy() : 0;
        List<CaseOutcome> all = new ArrayList<>();
        all.add(outcome);
        for (CaseOutcome one : first.cases()) {
            StopCase stop = stop(one);
            if (stop != null) {
                all.add(stop.again(one, lower, bus, chopper, outcome));
            }
        }
        addRest(bus, chopper, outcome, all);
        return new GroupRun(cycleOutcome.basis(), cycleOutcome.settling(), all);
    }

    /** The stop that came to an outcome; null if none did. */
    @Nullable
    StopCase stop(CaseOutcome one) {
        return stops.stream()
                .filter(stop -> stop.kind() == one.kind() && Objects.equals(stop.zone(), one.zone()))
                .findFirst()
                .orElse(null);
    }

    private void addRest(Bus bus, Chopper chopper, CaseOutcome cycleOutcome, List<CaseOutcome> all) {
        for (Rest rest : rests) {
            all.add(rest.cycle().on(bus, chopper).outcome().as(CaseKind.ZONE_AT_REST, rest.zone()));
        }
        if (lowering != null) {
            all.add(Lowering.on(lowering, bus, chopper, cycleOutcome.peakRise()));
        }
    }

    private static final class Builder {

        private record Moving(BrakingAxis axis, PowerCourse power) {}

        private final List<Moving> moving = new ArrayList<>();
        private final Map<String, StoppingAxis> stoppingAxes = new HashMap<>();
        private final boolean losses;
        private final CycleLoad cycle;

        private Builder(List<BrakingAxis> axes, boolean losses) {
            this.losses = losses;
            for (BrakingAxis axis : axes) {
                if (axis.course().duration() > 0) {
                    moving.add(new Moving(
                            axis,
                            losses
                                    ? PowerCourse.withLosses(axis.course(), axis.driveUnit())
                                    : PowerCourse.withoutLosses(axis.course())));
                }
            }
            cycle = CommonPeriod.load(powers(m -> true));
        }

        private GroupLoads loads(List<StopZone> zones) {
            List<StopCase> stops = new ArrayList<>();
            List<Rest> rests = new ArrayList<>();
            for (StopZone zone : zones) {
                Predicate<Moving> inside = m -> zone.id().equals(m.axis().stopZone());
                if (moving.stream().anyMatch(inside)) {
                    if (zone.category() != StopCategory.CATEGORY_0) {
                        stops.add(stop(CaseKind.STOP_ZONE, zone.id(), inside));
                    }
                    List<PowerCourse> others = powers(inside.negate());
                    if (!others.isEmpty()) {
                        rests.add(new Rest(zone.id(), CommonPeriod.load(others)));
                    }
                }
            }
            if (stops.size() > 1) {
                // an axis in a zone of category 0 has no torque then: it neither goes on nor returns anything
                stops.add(stop(CaseKind.STOP_ALL, null, m -> m.axis().stopZone() != null));
            }
            return new GroupLoads(
                    cycle,
                    stops,
                    rests,
                    Lowering.of(moving.stream().map(Moving::axis).toList(), losses));
        }

        private StopCase stop(CaseKind kind, @Nullable String zone, Predicate<Moving> inside) {
            return switch (cycle) {
                case SteadyCycle steady ->
                    new StopLoad(
                            kind,
                            zone,
                            new StopScene(
                                    stopping(inside, (one, stop) -> stop),
                                    CyclePower.of(
                                            powers(inside.negate()),
                                            steady.power().duration()),
                                    steady.power().duration(),
                                    losses),
                            steady.power());
                case PhaseBound bound ->
                    new UnrelatedStop(
                            kind,
                            zone,
                            stopping(inside, this::stoppingAxis),
                            moving.stream()
                                    .filter(inside.negate())
                                    .map(one ->
                                            new UnrelatedStop.Going(one.axis().id(), one.power()))
                                    .toList());
            };
        }

        /** One and the same for the stop of its zone and for that of all: it remembers what was found. */
        private StoppingAxis stoppingAxis(Moving one, StopScene.Stopping stop) {
            return stoppingAxes.computeIfAbsent(one.axis().id(), id -> new StoppingAxis(id, one.power(), stop, losses));
        }

        private <T> List<T> stopping(Predicate<Moving> inside, BiFunction<Moving, StopScene.Stopping, T> as) {
            List<T> stopping = new ArrayList<>();
            for (Moving one : moving) {
                var model = one.axis().stopModel();
                if (inside.test(one) && model != null) {
                    stopping.add(as.apply(
                            one,
                            new StopScene.Stopping(
                                    model,
                                    one.axis().driveUnit(),
                                    one.axis().course().duration())));
                }
            }
            return stopping;
        }

        private List<PowerCourse> powers(Predicate<Moving> which) {
            return moving.stream().filter(which).map(Moving::power).toList();
        }
    }
}
