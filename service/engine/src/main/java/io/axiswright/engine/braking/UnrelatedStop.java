package io.axiswright.engine.braking;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The controlled stop of axes whose cycles have unrelated periods: a guaranteed bound over every alignment. Up to any instant of
 * the stop each axis that stops has returned no more than the most of any window that ends in its stop; each that goes on no
 * more than the most of any window. While the chopper conducts, it removes at least V_on²/R, shared out among the axes in the
 * ratio of their peak powers.
 *
 * @param kind of one zone or of all
 * @param zone the zone
 * @param stopping the axes that stop, each with its own cycle; at least one
 * @param others the axes that go on
 */
record UnrelatedStop(CaseKind kind, @Nullable String zone, List<StoppingAxis> stopping, List<Going> others)
        implements StopCase {

    /**
     * An axis that goes on.
     *
     * @param id its id
     * @param cycle its power over its own cycle
     */
    record Going(String id, PowerCourse cycle) {}

    /** Keeps the lists from being changed. */
    UnrelatedStop {
        stopping = List.copyOf(stopping);
        others = List.copyOf(others);
    }

    @Override
    public List<CaseOutcome> on(Bus bus, Chopper chopper, CaseOutcome cycle) {
        double returned = largest(bus, 0);
        boolean chops = chopper.present() && bus.floorEnergy() + returned >= chopper.onEnergy();
        double peak = chops ? chopper.onEnergy() + largest(bus, taken(chopper)) : bus.floorEnergy() + returned;
        double burned = chops ? returned : 0;
        double start = chops ? chopper.onEnergy() : bus.floorEnergy();
        return List.of(new CaseOutcome(
                kind,
                zone,
                null,
                duration(),
                start,
                start + returned - burned,
                Double.isFinite(peak) ? peak : Math.max(bus.tripEnergy(), bus.floorEnergy()),
                Double.NaN,
                Double.NaN,
                returned,
                0,
                0,
                burned,
                burned,
                cycle.peakRise() + burned / chopper.heatCapacity(),
                peaks(),
                null,
                null,
                null));
    }

    @Override
    public boolean fits(Bus bus, Chopper chopper, CaseOutcome cycle) {
        return on(bus, chopper, cycle).getFirst().fits(bus);
    }

    @Override
    public CaseOutcome again(CaseOutcome outcome, double lower, Bus bus, Chopper chopper, CaseOutcome cycle) {
        return on(bus, chopper, cycle).getFirst();
    }

    /** The same with every deceleration as long as this, s. */
    @Override
    public UnrelatedStop within(double time) {
        return new UnrelatedStop(
                kind, zone, stopping.stream().map(s -> s.within(time)).toList(), others);
    }

    /** The longest deceleration, s. */
    @Override
    public double duration() {
        return stopping.stream().mapToDouble(StoppingAxis::duration).max().orElse(0);
    }

    /** What the chopper takes at switch-on, W; 0 without one. */
    static double taken(Chopper chopper) {
        return chopper.present() ? chopper.decay() * chopper.onEnergy() : 0;
    }

    /** An axis's share of what the chopper takes, W. */
    double share(StoppingAxis axis, double removed) {
        return removed == 0 ? 0 : removed * axis.peak() / peaks();
    }

    private double peaks() {
        return stopping.stream().mapToDouble(StoppingAxis::peak).sum()
                + others.stream().mapToDouble(o -> o.cycle().peak()).sum();
    }

    private double largest(Bus bus, double removed) {
        double peaks = peaks();
        if (removed >= peaks) {
            return 0; // the chopper takes all that can come at once
        }
        double sum = 0;
        for (Going other : others) {
            sum += BusPower.drained(other.cycle(), removed * other.cycle().peak() / peaks)
                    .largestWindow();
        }
        for (StoppingAxis axis : stopping) {
            sum += axis.worst(share(axis, removed), bus).bound();
        }
        return sum;
    }
}
