package io.axiswright.engine.conductor;

/** What a circuit feeds; North American rules add 25 % to some loads. IEC takes the load current as it is. */
public enum LoadKind {
    /** Load for less than three hours at a time, or a current that already holds its additions (a feeder by 430.24). */
    GENERAL,
    /** Load for three hours or more: 125 % (NFPA 70 210.19, 210.20, 215.2). */
    GENERAL_CONTINUOUS,
    /** Motors or drives: 125 % of the largest's rated input current and the others once (NFPA 70 430.22, 430.24, 430.122). */
    MOTOR_OR_DRIVE,
    /** Resistor that burns off braking energy: the share of its current that its duty asks for (NFPA 70 Table 430.29). */
    BRAKING_RESISTOR
}
