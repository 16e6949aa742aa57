package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.WorstInstant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for the worst alignment of a stop of axes whose cycles have unrelated periods. Every axis that stops is where it returns
 * most in a window that ends in its stop. The most returning window of every axis that goes on is made to end when the bus would
 * stand highest without them, or to begin with the stop; then one phase after the other is moved to the best of a grid, and the
 * grid drawn closer. Deterministic, and no more than a search: the bound says how much it may have missed.
 */
final class StopAlignmentSearch {

    private static final int GRID = 16;
    private static final int ROUNDS = 4;

    private final Bus bus;
    private final Chopper chopper;
    private final List<CyclePower> stopping = new ArrayList<>();
    private final double[] begun;
    private final List<PowerCourse> stops = new ArrayList<>();
    private final List<CyclePower> others = new ArrayList<>();
    private final double[] periods;
    private final double[][] windows;
    private final double runUp;
    private final double duration;

    private StopAlignmentSearch(UnrelatedStop stop, Bus bus, Chopper chopper) {
        this.bus = bus;
        this.chopper = chopper;
        double removed = UnrelatedStop.taken(chopper);
        begun = new double[stop.stopping().size()];
        double longest = 0;
        for (int k = 0; k < begun.length; k++) {
            StoppingAxis axis = stop.stopping().get(k);
            WorstInstant worst = axis.worst(stop.share(axis, removed), bus);
            begun[k] = worst.instant();
            stops.add(axis.from(worst));
            stopping.add(CyclePower.of(List.of(axis.cycle()), axis.cycle().duration()));
            longest = Math.max(longest, axis.cycle().duration());
        }
        periods = new double[stop.others().size()];
        windows = new double[periods.length][];
        for (int k = 0; k < periods.length; k++) {
            PowerCourse cycle = stop.others().get(k).cycle();
            periods[k] = cycle.duration();
            windows[k] = BusPower.drained(cycle, 0).largestWindowEnds();
            others.add(CyclePower.of(List.of(cycle), cycle.duration()));
            longest = Math.max(longest, cycle.duration());
        }
        runUp = longest;
        duration = stop.duration();
    }

    /**
     * A stop.
     *
     * @param peak highest energy of the bus from the start of deceleration on, J
     * @param phases how far into its cycle each axis is then, s: those that stop, then the others
     */
    record Found(double peak, double[] phases) {}

    /** The worst alignment found. */
    static Found of(UnrelatedStop stop, Bus bus, Chopper chopper) {
        return new StopAlignmentSearch(stop, bus, chopper.regulating()).search();
    }

    private Found search() {
        double[] ends = new double[periods.length];
        double[] begins = new double[periods.length];
        double highest = peak(List.of(), new double[0]).peakInstant();
        for (int k = 0; k < periods.length; k++) {
            ends[k] = wrapped(windows[k][1] - highest, periods[k]);
            begins[k] = wrapped(windows[k][0], periods[k]);
        }
        Found first = refined(ends);
        Found second = refined(begins);
        return second.peak() > first.peak() ? second : first;
    }

    private Found refined(double[] from) {
        double[] phases = from.clone();
        double best = peak(others, phases).peakEnergy();
        double share = 1;
        for (int round = 0; round < ROUNDS; round++) {
            for (int k = 0; k < phases.length; k++) {
                double middle = phases[k];
                double width = share * periods[k];
                for (int step = 0; step < GRID; step++) {
                    double[] tried = phases.clone();
                    tried[k] = wrapped(middle + width * ((step + 0.5) / GRID - 0.5), periods[k]);
                    double peak = peak(others, tried).peakEnergy();
                    if (peak > best) {
                        best = peak;
                        phases = tried;
                    }
                }
            }
            share *= 2.0 / GRID;
        }
        double[] all = Arrays.copyOf(begun, begun.length + phases.length);
        System.arraycopy(phases, 0, all, begun.length, phases.length);
        return new Found(best, all);
    }

    private static double wrapped(double phase, double period) {
        return phase - Math.floor(phase / period) * period;
    }

    /** The stop after a run-up as long as the longest cycle, from a bus at the rectifier's voltage. */
    private BusTrace peak(List<CyclePower> goingOn, double[] phases) {
        List<PowerCourse> before = new ArrayList<>();
        List<PowerCourse> after = new ArrayList<>(stops);
        for (int k = 0; k < begun.length; k++) {
            before.add(runUp(stopping.get(k), begun[k]));
        }
        for (int k = 0; k < phases.length; k++) {
            before.add(runUp(goingOn.get(k), phases[k]));
            after.add(goingOn.get(k).from(phases[k], phases[k], duration));
        }
        var simulation = new BusSimulation(bus, chopper);
        BusTrace reached = simulation.run(BusPower.once(before), new BusState(bus.floorEnergy(), false, 0));
        return simulation.run(BusPower.once(after), reached.end().withRise(0));
    }

    private PowerCourse runUp(CyclePower cycle, double phase) {
        double from = wrapped(phase - runUp, cycle.period());
        return cycle.from(from, from, runUp);
    }
}
