package io.axiswright.engine.braking;

import java.util.List;
import org.jspecify.annotations.Nullable;

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

    /** The same with every deceleration as long as this, s. */
    StopCase within(double time);

    /** The longest deceleration, s. */
    double duration();

    /** The zone; null for all. */
    @Nullable
    String zone();

    /** Of one zone or of all. */
    CaseKind kind();

    /**
     * The worst outcome of a stop on the bus at another line voltage, no higher than the first.
     *
     * @param outcome the worst at the first
     * @param lower by how much every energy of the bus is below that at the first, J; 0 if it is only known to be no higher
     */
    CaseOutcome again(CaseOutcome outcome, double lower, Bus bus, Chopper chopper, CaseOutcome cycle);
}
