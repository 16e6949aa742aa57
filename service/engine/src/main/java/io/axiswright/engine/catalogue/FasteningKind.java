package io.axiswright.engine.catalogue;

/** What a fastening part serves. */
public enum FasteningKind {
    /** Parallel key. */
    KEY,
    /** Clamp hub. */
    CLAMP,
    /** Bonded joint. */
    BONDED
}
