package io.axiswright.engine.topology;

/**
 * How far the heuristic looks around itself. Its work grows with the machine only as long as what it looks at does not.
 *
 * @param starts layouts it makes from improved axis prices, after a first one
 * @param nearest gateways or places looked at around an axis or a gateway
 * @param around places around a new gateway where the best greedy step is looked for again
 * @param choice unconnected axes a gateway chooses from, as a multiple of the most it can take
 */
record SearchBreadth(int starts, int nearest, int around, int choice) {

    /** For an answer without the exact search: measured to grow no faster than n log n up to 256 axes. */
    static final SearchBreadth NARROW = new SearchBreadth(2, 6, 4, 2);

    /** For the start of the exact search: several times the work, layouts some per cent cheaper. */
    static final SearchBreadth WIDE = new SearchBreadth(5, 12, 6, 4);
}
