package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.WorstInstant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The controlled stop of one stop zone, or of all, of axes whose cycles have a common period.
 *
 * @param kind of one zone or of all
 * @param zone the zone
 * @param scene what stops and what goes on
 * @param cycle power of all axes over the common cycle
 */
record StopLoad(CaseKind kind, @Nullable String zone, StopScene scene, BusPower cycle) implements StopCase {

    /** A proven bound lies above the value found by no more than this share of the bus's energy at high line. */
    private static final double TOLERANCE = 1e-6;

    /** Enough for every machine met; if not, the bound reached by then is given. */
    private static final int MOST_INSTANTS = 1000;

    @Override
    public List<CaseOutcome> on(Bus bus, Chopper chopper, CaseOutcome cycleOutcome) {
        StopOnBus stop = onBus(bus, chopper, cycleOutcome);
        WorstInstant.Tolerance tolerance = tolerance(bus);
        if (!chopper.present()) {
            WorstInstant highest = highest(stop, tolerance);
            return List.of(stop.outcome(StopCriterion.HIGHEST_VOLTAGE, highest, highest.bound()));
        }
        WorstInstant most = WorstInstant.of(stop.energy(), scene.cuts(), tolerance, MOST_INSTANTS);
        CaseOutcome longest = stop.outcome(StopCriterion.MOST_ENERGY, most, Double.NaN);
        double ceiling = stop.ceiling();
        // where the resistor takes all that comes, the bus rises alike from every instant: then the one of most energy
        // is meant
        if (longest.peakEnergy() >= ceiling - tolerance.plus()) {
            return List.of(stop.outcome(StopCriterion.HIGHEST_VOLTAGE, most, ceiling));
        }
        WorstInstant highest = highest(stop, tolerance);
        return longest.peakEnergy() >= highest.value() - tolerance.plus()
                ? List.of(stop.outcome(StopCriterion.HIGHEST_VOLTAGE, most, highest.bound()))
                : List.of(stop.outcome(StopCriterion.HIGHEST_VOLTAGE, highest, highest.bound()), longest);
    }

    private static WorstInstant highest(StopOnBus stop, WorstInstant.Tolerance tolerance) {
        return WorstInstant.of(stop.voltage(), stop.cuts(), tolerance, MOST_INSTANTS);
    }

    /**
     * A lower rectified voltage lets the bus stand nowhere higher at any instant, for a bus that starts lower under the same
     * power never overtakes. So where the instant that was worst at the first line still lets it rise as high, less what every
     * energy is lower by, it is the worst here too and the bound holds on; else this line has a worst instant of its own.
     */
    @Override
    public CaseOutcome again(CaseOutcome outcome, double lower, Bus bus, Chopper chopper, CaseOutcome cycleOutcome) {
        CaseOutcome.Worst worst = outcome.worst();
        if (worst == null) {
            return outcome;
        }
        StopOnBus stop = onBus(bus, chopper, cycleOutcome);
        CaseOutcome same = stop.outcome(outcome.criterion(), worst.found(), worst.bound() - lower);
        WorstInstant.Tolerance tolerance = tolerance(bus);
        if (outcome.criterion() != StopCriterion.HIGHEST_VOLTAGE
                || same.peakEnergy() >= outcome.peakEnergy() - lower - tolerance.plus()) {
            return same;
        }
        WorstInstant highest = highest(stop, tolerance);
        return stop.outcome(StopCriterion.HIGHEST_VOLTAGE, highest, highest.bound());
    }

    @Override
    public StopLoad within(double time) {
        return new StopLoad(kind, zone, scene.within(time), cycle);
    }

    @Override
    public double duration() {
        return scene.duration();
    }

    @Override
    public boolean fits(Bus bus, Chopper chopper, CaseOutcome cycleOutcome) {
        StopOnBus stop = onBus(bus, chopper, cycleOutcome);
        return stop.ceiling() < bus.tripEnergy()
                || WorstInstant.staysBelow(stop.voltage(), stop.cuts(), bus.tripEnergy(), MOST_INSTANTS);
    }

    /** The tolerance of a search on a bus, J. */
    static WorstInstant.Tolerance tolerance(Bus bus) {
        return new WorstInstant.Tolerance(0, TOLERANCE * bus.floorEnergy());
    }

    /** The stop as a function of its instant. */
    StopOnBus onBus(Bus bus, Chopper chopper, CaseOutcome cycleOutcome) {
        StartEnergies starts = StartEnergies.of(cycle, bus, chopper, cycleOutcome.peakEnergy());
        return new StopOnBus(this, bus, chopper, starts, cycleOutcome.peakRise());
    }
}
