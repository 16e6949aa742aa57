package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;

/** Finds how long each stop zone would have to decelerate to need no braking unit. */
final class ZoneReliefs {

    static final int LONGEST = 50;
    private static final double LONGER = 1.25;
    private static final double SHARP = 1e-3;

    private ZoneReliefs() {}

    /** For each zone whose stop is too much for the bare bus though the cycle is not. */
    static List<ZoneRelief> of(GroupLoads loads, GroupRun bare, Bus bus) {
        List<ZoneRelief> reliefs = new ArrayList<>();
        if (bare.cycle().fits(bus)) {
            for (StopCase stop : loads.stops()) {
                String zone = stop.zone();
                if (zone != null && !stop.fits(bus, Chopper.NONE, bare.cycle())) {
                    double time = shortest(stop, bus, bare.cycle());
                    reliefs.add(new ZoneRelief(zone, Double.isNaN(time) ? null : new Time(time)));
                }
            }
        }
        return reliefs;
    }

    private static double shortest(StopCase stop, Bus bus, CaseOutcome cycle) {
        double asked = stop.duration();
        double failing = asked;
        for (double time = asked * LONGER; time <= LONGEST * asked; time *= LONGER) {
            if (stop.within(time).fits(bus, Chopper.NONE, cycle)) {
                double fitting = time;
                while (fitting - failing > SHARP * fitting) {
                    double middle = (failing + fitting) / 2;
                    if (stop.within(middle).fits(bus, Chopper.NONE, cycle)) {
                        fitting = middle;
                    } else {
                        failing = middle;
                    }
                }
                return fitting;
            }
            failing = time;
        }
        return Double.NaN;
    }
}
