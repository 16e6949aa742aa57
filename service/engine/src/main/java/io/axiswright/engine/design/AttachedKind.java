package io.axiswright.engine.design;

/** What is joined to the cable ways. */
public enum AttachedKind {
    /** The controlling computer. */
    HOST,
    /** The gateways of a place. */
    PLACE,
    /** The drive unit of an axis, there or reserved. */
    AXIS
}
