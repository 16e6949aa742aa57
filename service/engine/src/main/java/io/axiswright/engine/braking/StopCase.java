package io.axiswright.engine.braking;

import java.util.List;

/** A controlled stop of some of a bus's axes. */
sealed interface StopCase permits StopLoad, UnrelatedStop {

    /**
     * The stop on a bus, with or without a braking unit.
     *
     * @param cycle what the cycle of all axes does to the bus
     */
    List<CaseOutcome> on(Bus bus, Chopper chopper, CaseOutcome cycle);

    /** Whether the bus is proven to stay under its trip voltage, whenever the stop begins. */
    boolean fits(Bus bus, Chopper chopper, CaseOutcome cycle);

    /** The outcome of a stop on the bus at another line voltage, begun at the same instant. */
    CaseOutcome again(CaseOutcome outcome, Bus bus, Chopper chopper, CaseOutcome cycle);
}
