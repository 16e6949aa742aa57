package io.axiswright.engine.braking;

/**
 * State of one bus at an instant.
 *
 * @param energy energy of its capacitors, J
 * @param chopping whether the chopper conducts
 * @param rise temperature of the resistor above ambient, K
 */
record BusState(double energy, boolean chopping, double rise) {

    /** The same bus with the resistor at another temperature. */
    BusState withRise(double otherRise) {
        return new BusState(energy, chopping, otherRise);
    }
}
