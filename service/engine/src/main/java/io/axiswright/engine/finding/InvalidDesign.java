package io.axiswright.engine.finding;

import java.util.List;

/** The input cannot be given a meaning; carries every fault found, each with its place. */
public final class InvalidDesign extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    /** An invalid input with all its faults; at least one. */
    public InvalidDesign(List<Fault> faults) {
        super(faults.getFirst().pointer() + ": " + faults.getFirst().detail());
        this.faults = List.copyOf(faults);
    }

    /** The faults, in document order. */
    public List<Fault> faults() {
        return faults;
    }
}
