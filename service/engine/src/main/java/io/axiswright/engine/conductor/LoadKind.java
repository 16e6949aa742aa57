package io.axiswright.engine.conductor;

/** What a circuit feeds; North American rules add 25 % to some loads. IEC takes the load current as it is. */
public enum LoadKind {
    /** Load for less than three hours at a time, or a current that already holds its additions (a feeder by 430.24). */
    GENERAL,
    /** Load for three hours or more: 125 % (NFPA 70 210.19, 210.20, 215.2). */
    GENERAL_CONTINUOUS,
    /** One motor or drive: 125 % of its rated input current (NFPA 70 430.22, 430.122). */
    MOTOR_OR_DRIVE
}
