package io.axiswright.engine.braking;

/** What the cycles of a bus's axes do to it. */
sealed interface CycleLoad permits SteadyCycle, PhaseBound {

    /** The cycle case on a bus, with or without a braking unit. */
    CycleOutcome on(Bus bus, Chopper chopper);
}
