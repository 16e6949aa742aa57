package io.axiswright.engine.controlpower;

/** What the loads of the control supply do. */
public enum ControlMode {
    /** All electronics and sensors on, brakes engaged, outputs off. */
    STANDBY,
    /** As in standby, each of the electronics with its inrush current at the same moment. */
    START_UP,
    /** All electronics and sensors on, released brakes held, outputs off. */
    RUNNING,
    /** Running, with all outputs on. */
    OUTPUTS_ON,
    /** Outputs on, and all brakes pull in at the same moment. */
    BRAKES_TOGETHER,
    /** Outputs on, and each brake pulls in by itself while the others are held. */
    BRAKES_STAGGERED
}
