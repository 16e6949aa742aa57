package io.axiswright.engine.duty;

/**
 * A stretch of a cycle in which power flows one way only.
 *
 * @param start when it starts, s
 * @param end when it ends, s
 * @param energy what the shaft is given, J; negative where it gives back
 */
record PowerStretch(double start, double end, double energy) {

    /** How long it lasts, s. */
    double duration() {
        return end - start;
    }

    /** Whether the other follows at once with power the same way. */
    boolean goesOnIn(PowerStretch next) {
        return end == next.start && Math.signum(energy) == Math.signum(next.energy);
    }

    /** Together with the one that follows. */
    PowerStretch with(PowerStretch next) {
        return new PowerStretch(start, next.end, energy + next.energy);
    }
}
