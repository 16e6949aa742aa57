package io.axiswright.engine.topology;

/** How the layout was found, and so what may be said of its cost. */
public enum LayoutMethod {
    /** No layout costs less. */
    PROVEN_OPTIMAL,
    /** The exact search met its limit; the gap says how much might still be saved at most. */
    SEARCH_LIMIT,
    /** Greedy construction and local improvement; the gap says how much might still be saved at most. */
    HEURISTIC,
    /** There is no layout. */
    NONE
}
