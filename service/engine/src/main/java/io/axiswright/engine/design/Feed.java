package io.axiswright.engine.design;

/** What a device is fed from. */
public enum Feed {
    /** One phase: line to neutral or line to line. */
    ONE_PHASE,
    /** Three phases. */
    THREE_PHASE,
    /** A DC bus that something else feeds. */
    DC_BUS
}
