package io.axiswright.engine.topology;

/** How hard to look for the cheapest layout. */
public enum LayoutEffort {
    /** A good layout and a proven lower bound, in plain Java: milliseconds. */
    HEURISTIC,
    /** The cheapest layout with its proof, as far as the deterministic limit of the search allows. */
    PROVEN
}
