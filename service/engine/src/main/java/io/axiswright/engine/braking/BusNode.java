package io.axiswright.engine.braking;

/**
 * An instant at which the state of a bus changed its kind, and the state from then on.
 *
 * @param segment the power from then on
 * @param local its local time, s
 * @param energy energy of the bus, J
 * @param rise temperature of the resistor above ambient, K
 * @param mode what governs it until the next node
 */
record BusNode(PowerSegment segment, double local, double energy, double rise, BusMode mode) {

    /** The instant, s. */
    double instant() {
        return segment.instant(local);
    }

    /**
     * Energy of the bus at a local time that this node governs, J.
     *
     * @param decay rate at which the resistor empties the bus, 1/s
     */
    double energyAt(double later, double decay) {
        return switch (mode) {
            case HELD -> energy;
            case FREE -> energy + segment.energy(local, later);
            case CHOPPING -> chopped(later - local, decay);
        };
    }

    private double chopped(double time, double decay) {
        if (time <= 0) {
            return energy;
        }
        var solution = new ChopperSolution(decay);
        solution.begin(segment.powerFrom(local), energy);
        return solution.value(time);
    }
}
