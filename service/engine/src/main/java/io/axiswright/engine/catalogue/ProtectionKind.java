package io.axiswright.engine.catalogue;

/** What opens a 24 V output circuit when too much current flows. */
public enum ProtectionKind {
    /** Electronic switch that limits or watches the current. */
    ELECTRONIC,
    /** Fuse. */
    FUSE,
    /** Miniature circuit-breaker; its characteristic must be that for direct current. */
    CIRCUIT_BREAKER
}
