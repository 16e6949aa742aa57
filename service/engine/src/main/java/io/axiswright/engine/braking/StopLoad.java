package io.axiswright.engine.braking;

import org.jspecify.annotations.Nullable;

/**
 * A controlled stop of some or all of a bus's axes together.
 *
 * @param kind of one zone or of all
 * @param zone the zone
 * @param criterion from which instant each axis stops
 * @param power power returned, all decelerations starting together
 */
record StopLoad(CaseKind kind, @Nullable String zone, StopCriterion criterion, BusPower power) {

    /**
     * The stop on a bus whose state at its start is the worst of the cycle. A chopper still on at the end finishes its pulse.
     */
    CaseOutcome on(Bus bus, Chopper chopper, CaseOutcome cycle) {
        double start = Math.min(cycle.peakEnergy(), Math.max(bus.tripEnergy(), bus.floorEnergy()));
        BusState state = new BusState(start, start >= chopper.onEnergy(), cycle.peakRise());
        BusTrace trace = new BusSimulation(bus, chopper).run(power, state);
        BusState end = trace.end();
        double tail = end.chopping() ? end.energy() - chopper.offEnergy() : 0;
        return new CaseOutcome(
                kind,
                zone,
                criterion,
                power.duration(),
                start,
                end.energy() - tail,
                trace.peakEnergy(),
                trace.peakInstant(),
                trace.tripInstant(),
                power.returned(),
                power.drawn(),
                trace.supplied(),
                trace.burned() + tail,
                Math.max(trace.peakRise(), end.rise() + tail / chopper.heatCapacity()));
    }
}
