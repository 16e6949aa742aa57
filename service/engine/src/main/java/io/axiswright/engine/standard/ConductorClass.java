package io.axiswright.engine.standard;

/** Construction of a metric conductor (IEC 60228). */
public enum ConductorClass {
    /** Stranded, for fixed installation. */
    CLASS_2,
    /** Flexible, as machine wiring mostly is. */
    CLASS_5
}
