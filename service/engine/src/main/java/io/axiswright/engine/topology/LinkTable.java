package io.axiswright.engine.topology;

/**
 * The cable picked for every pair of ends, in whole numbers.
 *
 * @param cost price in the model's money unit, {@link #FAR} where no cable reaches
 * @param length length of the cable in mm
 */
record LinkTable(long[][] cost, long[][] length) {

    /** More than any layout costs; a few thousand of it still add up without overflow. */
    static final long FAR = 1L << 50;

    /** Whether a cable reaches from one end to the other. */
    boolean reaches(int from, int to) {
        return cost[from][to] < FAR;
    }
}
