package io.axiswright.engine.design;

/** Where speed and effort of a course were taken. */
public enum TorquePlace {
    /** At the load: its force and speed, or its torque and angular speed. */
    LOAD,
    /** At the motor's end of the transmission; rotor, brake and coupling of the motor are not in the torque. */
    MOTOR_SHAFT
}
