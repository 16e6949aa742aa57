package io.axiswright.engine.design;

/** Editions of the standard by which the distance of a safeguard is worked out. */
public enum SafeguardStandard {
    /** ISO 13855:2010: minimum distance S = K·T + C. */
    ISO_13855_2010,
    /** ISO 13855:2024: separation distance S = K·T + D_DS + Z. */
    ISO_13855_2024
}
