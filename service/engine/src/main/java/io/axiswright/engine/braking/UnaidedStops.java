package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds within which times each stop zone could decelerate without a braking unit. */
final class UnaidedStops {

    static final int FARTHEST = 20;
    private static final double LONGER = 1.5;
    private static final double SHARP = 1e-3;

    private final Bus bus;
    private final CaseOutcome cycle;

    private UnaidedStops(Bus bus, CaseOutcome cycle) {
        this.bus = bus;
        this.cycle = cycle;
    }

    /** For each zone of a bus whose cycle needs no unit; none if it does. */
    static List<UnaidedStop> of(GroupLoads loads, CaseOutcome cycle, Bus bus) {
        List<UnaidedStop> all = new ArrayList<>();
        if (cycle.fits(bus)) {
            var search = new UnaidedStops(bus, cycle);
            for (StopCase stop : loads.stops()) {
                String zone = stop.zone();
                if (zone != null && stop.duration() > 0) {
                    all.add(new UnaidedStop(zone, search.ranges(stop)));
                }
            }
        }
        return all;
    }

    private List<UnaidedStop.Range> ranges(StopCase stop) {
        List<UnaidedStop.Range> ranges = new ArrayList<>();
        double last = stop.duration() / FARTHEST;
        boolean open = fits(stop, last);
        Time shortest = null;
        for (double time = last * LONGER; last < stop.duration() * FARTHEST; time *= LONGER) {
            boolean fits = fits(stop, time);
            if (fits && !open) {
                shortest = new Time(boundary(stop, last, time));
            } else if (!fits && open) {
                ranges.add(range(shortest, new Time(boundary(stop, time, last))));
            }
            open = fits;
            last = time;
        }
        if (open) {
            ranges.add(range(shortest, null));
        }
        return ranges;
    }

    private static UnaidedStop.Range range(@Nullable Time shortest, @Nullable Time longest) {
        return new UnaidedStop.Range(shortest, longest);
    }

    /** A time that fits, next to where it no longer does. */
    private double boundary(StopCase stop, double failing, double fitting) {
        double fails = failing;
        double does = fitting;
        while (Math.abs(does - fails) > SHARP * does) {
            double middle = (fails + does) / 2;
            if (fits(stop, middle)) {
                does = middle;
            } else {
                fails = middle;
            }
        }
        return does;
    }

    private boolean fits(StopCase stop, double time) {
        return stop.within(time).fits(bus, Chopper.NONE, cycle);
    }
}
