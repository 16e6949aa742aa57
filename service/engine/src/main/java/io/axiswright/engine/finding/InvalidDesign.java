package io.axiswright.engine.finding;

import java.util.List;

/** The input cannot be given a meaning; carries every fault found, each with its place. */
public final class InvalidDesign extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;
    private final int omitted;

    /** An invalid input with all its faults; at least one. */
    public InvalidDesign(List<Fault> faults) {
        this(faults, 0);
    }

    /** An invalid input with the first of its faults, at least one, and how many more there are. */
    public InvalidDesign(List<Fault> faults, int omitted) {
        super(faults.getFirst().pointer() + ": " + faults.getFirst().detail());
        this.faults = List.copyOf(faults);
        this.omitted = omitted;
    }

    /** The faults, in document order. */
    public List<Fault> faults() {
        return faults;
    }

    /** How many more faults there are than {@link #faults} lists. */
    public int omitted() {
        return omitted;
    }

    /** The same input as part of a larger document, in which it stands at a place. */
    public InvalidDesign under(String place) {
        return new InvalidDesign(
                faults.stream().map(fault -> fault.at(place + fault.pointer())).toList(), omitted);
    }
}
