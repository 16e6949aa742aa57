package io.axiswright.engine.design;

/** Where speed and effort of a course were taken. */
public enum TorquePlace {
    /**
     * At the load: its force and speed, or its torque and angular speed. Of a crank, the force on the slider and the speed of
     * the crank; of a roll, the pull in the material and the speed that its moves state.
     */
    LOAD,
    /** At the motor's end of the transmission; rotor, brake and coupling of the motor are not in the torque. */
    MOTOR_SHAFT
}
