package io.axiswright.engine.catalogue;

import io.axiswright.engine.condition.Reach;
import java.util.EnumSet;
import java.util.Set;

/** What a demand rule counts: its quantity is asked for once for each. */
public enum DemandBasis {
    /** The machine, once. */
    MACHINE(EnumSet.of(Reach.MACHINE)),
    /** Every axis. */
    AXIS(EnumSet.of(Reach.AXIS)),
    /** Every branch circuit of the AC supply. */
    CIRCUIT(EnumSet.of(Reach.CIRCUIT)),
    /** Every unit of certain items on the bill: a piece, or a metre of bulk cable. */
    ITEM(EnumSet.allOf(Reach.class)),
    /** Every metre of certain cables on the bill. */
    LENGTH(EnumSet.allOf(Reach.class));

    private final Set<Reach> askers;

    DemandBasis(Set<Reach> askers) {
        this.askers = askers;
    }

    /** What may ask by it. */
    public Set<Reach> askers() {
        return Set.copyOf(askers);
    }

    /** Whether it counts what stands on the bill; else it counts parts of the design. */
    public boolean countsItems() {
        return this == ITEM || this == LENGTH;
    }
}
