package io.axiswright.engine.braking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for the worst alignment of cycles with unrelated periods: every axis's own most returning window is made to begin, or
 * to end, with that of the first, which is the worst where nothing else moves; then one phase after the other is moved to the
 * best of a grid, and the grid drawn closer, as long as that raises the bus. Deterministic, and no more than a search: the
 * bound says how much it may have missed.
 */
final class AlignmentSearch {

    private static final int GRID = 16;
    private static final int ROUNDS = 6;

    private final List<PowerCourse> courses;
    private final List<CyclePower> cycles;
    private final Bus bus;
    private final Chopper chopper;
    private final double length;

    private AlignmentSearch(List<PowerCourse> courses, Bus bus, Chopper chopper) {
        this.courses = courses;
        this.cycles = courses.stream()
                .map(c -> CyclePower.of(List.of(c), c.duration()))
                .toList();
        this.bus = bus;
        this.chopper = chopper;
        this.length =
                2 * courses.stream().mapToDouble(PowerCourse::duration).max().orElse(0);
    }

    /**
     * An alignment.
     *
     * @param peak highest energy of the bus, J
     * @param phases how far into its cycle each axis starts, s
     * @param power power returned under it, from one turn of the longest cycle before these phases to one after
     */
    record Found(double peak, double[] phases, BusPower power) {}

    /** The worst alignment found. */
    static Found of(List<PowerCourse> courses, Bus bus, Chopper chopper) {
        return new AlignmentSearch(courses, bus, chopper.regulating()).search();
    }

    private Found search() {
        double[] begins = new double[courses.size()];
        double[] ends = new double[courses.size()];
        for (int k = 0; k < courses.size(); k++) {
            double[] window = BusPower.drained(courses.get(k), 0).largestWindowEnds();
            begins[k] = window[0];
            ends[k] = window[1];
        }
        Found first = refined(begins);
        Found second = refined(ends);
        return second.peak() > first.peak() ? second : first;
    }

    private Found refined(double[] start) {
        double[] phases = start.clone();
        double best = peak(phases);
        double share = 0.5;
        for (int round = 0; round < ROUNDS; round++) {
            for (int k = 1; k < phases.length; k++) {
                double centre = phases[k];
                double period = courses.get(k).duration();
                for (int step = 1; step < GRID; step++) {
                    double[] tried = phases.clone();
                    tried[k] = wrapped(centre + (2.0 * step / GRID - 1) * share * period, period);
                    double peak = peak(tried);
                    if (peak > best) {
                        best = peak;
                        phases = tried;
                    }
                }
            }
            share *= 2.0 / GRID;
        }
        return new Found(best, relative(phases), power(phases));
    }

    private double[] relative(double[] phases) {
        double[] relative = new double[phases.length];
        Arrays.setAll(
                relative, k -> wrapped(phases[k] - phases[0], courses.get(k).duration()));
        return relative;
    }

    private static double wrapped(double phase, double period) {
        return phase - Math.floor(phase / period) * period;
    }

    /** From a bus at the rectifier's voltage. */
    private double peak(double[] phases) {
        return new BusSimulation(bus, chopper)
                .run(power(phases), new BusState(bus.floorEnergy(), false, 0))
                .peakEnergy();
    }

    private BusPower power(double[] phases) {
        List<PowerCourse> together = new ArrayList<>();
        for (int k = 0; k < phases.length; k++) {
            // a whole turn later begins the run-up, so that windows that end at the phase are seen too
            double from = wrapped(phases[k] - length / 2, courses.get(k).duration());
            together.add(cycles.get(k).from(from, from, length));
        }
        return BusPower.once(together);
    }
}
