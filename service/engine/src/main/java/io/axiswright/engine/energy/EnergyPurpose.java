package io.axiswright.engine.energy;

/** What becomes of the energy a machine takes from the mains. */
public enum EnergyPurpose {
    /** Work at the motor shafts less what comes back: process, friction, lost in gears and mechanisms. */
    SHAFT_WORK,
    /** Heat in the windings of the motors. */
    MOTOR_COPPER,
    /** Loss of the power electronics at any load. */
    ELECTRONICS_STANDBY,
    /** What the load adds to it, as far as the catalogue states it. */
    ELECTRONICS_LOAD,
    /** Heat in braking resistors. */
    BRAKING_RESISTORS,
    /** Separately driven fans of drive units. */
    VENTILATION,
    /** What reaches the 24 V loads and their cables. */
    CONTROL_POWER,
    /** Heat in the control supplies. */
    CONTROL_SUPPLIES,
    /** Heat in transformers, as far as their losses are stated. */
    TRANSFORMERS,
    /** Heat in the conductors of feeder and branch circuits. */
    CONDUCTORS
}
