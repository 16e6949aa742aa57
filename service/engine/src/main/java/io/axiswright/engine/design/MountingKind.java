package io.axiswright.engine.design;

/** How the drive unit is held. */
public enum MountingKind {
    /** On feet (IM B3, IEC 60034-7). */
    FOOT,
    /** By its face (IM B14, IEC 60034-7). */
    FACE
}
