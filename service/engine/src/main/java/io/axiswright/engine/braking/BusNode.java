package io.axiswright.engine.braking;

/**
 * An instant at which the state of a bus changed its kind, and the state from then on.
 *
 * @param segment the power from then on
 * @param local its local time, s
 * @param energy energy of the bus, J
 * @param mode what governs it until the next node
 */
record BusNode(PowerSegment segment, double local, double energy, BusMode mode) {

    /** The instant, s. */
    double instant() {
        return segment.instant(local);
    }
}
