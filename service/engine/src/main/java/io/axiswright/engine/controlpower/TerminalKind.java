package io.axiswright.engine.controlpower;

/** What stands at a point of the 24 V network. */
public enum TerminalKind {
    /** A gateway. */
    GATEWAY,
    /** A drive unit with its holding brake, if it has one. */
    DRIVE_UNIT,
    /** A sensor, valve or signal fed through a gateway. */
    FIELD_DEVICE
}
