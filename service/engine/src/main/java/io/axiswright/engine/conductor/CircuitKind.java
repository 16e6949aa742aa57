package io.axiswright.engine.conductor;

/** What current a circuit carries and on how many loaded conductors. */
public enum CircuitKind {
    /** Alternating current on two loaded conductors. */
    AC_ONE_PHASE(2),
    /** Alternating current on three loaded conductors. */
    AC_THREE_PHASE(3),
    /** Direct current, out and back. */
    DC(2);

    private final int loadedConductors;

    CircuitKind(int loadedConductors) {
        this.loadedConductors = loadedConductors;
    }

    /** Conductors that carry current in normal operation. */
    public int loadedConductors() {
        return loadedConductors;
    }
}
