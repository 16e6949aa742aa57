package io.axiswright.engine.mounting;

/** How a shaft fastening gives way. */
public enum FasteningMode {
    /** The key shears. */
    SHEAR,
    /** The side of the key or its keyway yields. */
    BEARING,
    /** The joint slips. */
    SLIP,
    /** The adhesive shears. */
    BOND
}
