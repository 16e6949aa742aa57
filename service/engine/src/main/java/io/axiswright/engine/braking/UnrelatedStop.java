package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.WorstInstant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The controlled stop of axes whose cycles have unrelated periods: a guaranteed bound over every alignment. Each axis that
 * stops returns no more than the most of any window of its cycle, and then the most of any stop of it; each that goes on no
 * more than the most of any window. While the chopper conducts, it removes at least V_on²/R, shared out among the axes in the
 * ratio of their peak powers.
 *
 * @param kind of one zone or of all
 * @param zone the zone
 * @param stopping the axes that stop, each with its own cycle
 * @param others power of the axes that go on
 * @param losses whether motors and drives burn energy
 */
record UnrelatedStop(
        CaseKind kind, @Nullable String zone, List<Stopping> stopping, List<PowerCourse> others, boolean losses)
        implements StopCase {

    private static final int MOST_INSTANTS = 2000;

    /**
     * One axis that stops.
     *
     * @param stop its stops
     * @param cycle its power over its own cycle
     */
    record Stopping(StopScene.Stopping stop, PowerCourse cycle) {}

    /** Keeps the lists from being changed. */
    UnrelatedStop {
        stopping = List.copyOf(stopping);
        others = List.copyOf(others);
    }

    @Override
    public List<CaseOutcome> on(Bus bus, Chopper chopper, CaseOutcome cycle) {
        double returned = largest(bus, 0);
        boolean chops = chopper.present() && bus.floorEnergy() + returned >= chopper.onEnergy();
        double peak = chops
                ? chopper.onEnergy() + largest(bus, chopper.decay() * chopper.onEnergy())
                : bus.floorEnergy() + returned;
        double burned = chops ? returned : 0;
        double duration = stopping.stream()
                .mapToDouble(s -> s.stop().model().duration())
                .max()
                .orElse(0);
        double start = chops ? chopper.onEnergy() : bus.floorEnergy();
        return List.of(new CaseOutcome(
                kind,
                zone,
                null,
                duration,
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

    private double peaks() {
        return stopping.stream().mapToDouble(s -> weight(s)).sum()
                + others.stream().mapToDouble(PowerCourse::peak).sum();
    }

    private static double weight(Stopping axis) {
        return axis.cycle().peak() + 1; // of an axis that never returns power in its cycle a little, for its stop
    }

    private double largest(Bus bus, double removed) {
        double peaks = peaks();
        double sum = 0;
        for (PowerCourse other : others) {
            sum += BusPower.drained(other, removed * other.peak() / peaks).largestWindow();
        }
        for (Stopping axis : stopping) {
            double share = removed * weight(axis) / peaks;
            sum += BusPower.drained(axis.cycle(), share).largestWindow() + worstStop(axis, share, bus);
        }
        return sum;
    }

    /** The most any stop of one axis returns in one piece while a constant power is taken away, proven, J. */
    private double worstStop(Stopping axis, double drain, Bus bus) {
        var scene = new StopScene(
                List.of(axis.stop()), CyclePower.of(List.of(), 0), axis.stop().period(), losses);
        WorstInstant.Bending objective = new WorstInstant.Bending() {
            @Override
            public double value(double instant, double beside) {
                return scene.power(instant, beside).less(drain).largestPart();
            }

            @Override
            public double bend(double from, double to) {
                return scene.bendOver(drain, from, to);
            }
        };
        return WorstInstant.of(objective, scene.cuts(), StopLoad.tolerance(bus), MOST_INSTANTS)
                .bound();
    }
}
