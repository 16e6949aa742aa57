package io.axiswright.engine.braking;

import java.util.List;

/**
 * Cycles with unrelated periods: every alignment comes sooner or later, so what is guaranteed is a bound. In any window the
 * axes together return no more than the sum of the most each returns in any window of its own, and while the chopper conducts
 * it removes at least V_on²/R. That power is shared out among the axes in the ratio of their own peak powers: if it covers
 * the sum of the peaks, the voltage cannot rise above V_on.
 *
 * @param courses each axis's power over its own cycle
 */
record PhaseBound(List<PowerCourse> courses) implements CycleLoad {

    /** Keeps the courses from being changed. */
    PhaseBound {
        courses = List.copyOf(courses);
    }

    @Override
    public CycleOutcome on(Bus bus, Chopper chopper) {
        double duration =
                courses.stream().mapToDouble(PowerCourse::duration).max().orElse(0);
        double returned = 0;
        double drawn = 0;
        for (PowerCourse course : courses) {
            BusPower power = BusPower.drained(course, 0);
            returned += power.returned() * duration / course.duration();
            drawn += power.drawn() * duration / course.duration();
        }
        double windows = windows(0);
        boolean chops = chopper.present() && bus.floorEnergy() + windows >= chopper.onEnergy();
        double peak = chops
                ? chopper.onEnergy() + windows(chopper.decay() * chopper.onEnergy())
                : bus.floorEnergy() + windows;
        double burned = chops ? returned : 0;
        CaseOutcome outcome = new CaseOutcome(
                CaseKind.CYCLE,
                null,
                null,
                duration,
                bus.floorEnergy(),
                bus.floorEnergy(),
                Double.isFinite(peak) ? peak : Math.max(bus.tripEnergy(), bus.floorEnergy()),
                Double.NaN,
                Double.NaN,
                returned,
                drawn,
                Math.max(0, drawn - returned + burned),
                burned,
                chops ? pulse() : 0,
                chops ? peakRise(bus, chopper) : 0,
                courses.stream().mapToDouble(PowerCourse::peak).sum(),
                null,
                null,
                null);
        return new CycleOutcome(CycleBasis.BOUND, outcome, null);
    }

    private double windows(double removed) {
        double peaks = courses.stream().mapToDouble(PowerCourse::peak).sum();
        double sum = 0;
        for (PowerCourse course : courses) {
            double share = removed == 0 ? 0 : removed >= peaks ? course.peak() : removed * course.peak() / peaks;
            sum += BusPower.drained(course, share).largestWindow();
        }
        return sum;
    }

    /** Every axis's largest run of return, as often as it comes round within the longest run of any: all one pulse. */
    private double pulse() {
        List<ResistorPulses> alone = courses.stream()
                .map(course -> ResistorPulses.ofReturns(BusPower.drained(course, 0)))
                .toList();
        double longest =
                alone.stream().mapToDouble(ResistorPulses::longest).max().orElse(0);
        double sum = 0;
        for (int k = 0; k < alone.size(); k++) {
            double times = 1 + Math.floor(longest / courses.get(k).duration());
            sum += times * alone.get(k).largest();
        }
        return sum;
    }

    /** The long-run mean with no netting between axes, and on top one full return of each and the capacitor's content. */
    private double peakRise(Bus bus, Chopper chopper) {
        double pulse = chopper.onEnergy() - bus.floorEnergy();
        double mean = 0;
        for (PowerCourse course : courses) {
            double returned = BusPower.drained(course, 0).returned();
            pulse += returned;
            mean += returned / course.duration();
        }
        return (mean * chopper.coolingTime() + pulse) / chopper.heatCapacity();
    }
}
