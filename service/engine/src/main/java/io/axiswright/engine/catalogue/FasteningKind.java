package io.axiswright.engine.catalogue;

/** What a fastening part serves. */
public enum FasteningKind {
    /** Parallel key. */
    KEY,
    /** Set screws. */
    SET_SCREW,
    /** Clamp hub. */
    CLAMP,
    /** Keyless bushing. */
    BUSHING,
    /** Press or shrink fit. */
    INTERFERENCE,
    /** Bonded joint. */
    BONDED
}
