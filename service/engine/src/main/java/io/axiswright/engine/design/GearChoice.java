package io.axiswright.engine.design;

/** Whether a gear unit of the catalogue may be put between a drive unit and the gears that the design states. */
public enum GearChoice {
    /** Only the gears that the design states. */
    STATED,
    /** With or without a gear unit, whichever is the better buy. */
    CHOOSE
}
