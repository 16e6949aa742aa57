package io.axiswright.engine.condition;

/** What is so or not. */
public enum FlagAttribute {
    /** A braking unit burns off returned energy somewhere on the machine. */
    BRAKING_UNIT(Reach.MACHINE),
    /** The drive unit of the axis stands on feet. */
    FOOT_MOUNTED(Reach.AXIS),
    /** The drive unit of the axis runs with forced ventilation. */
    FORCED_VENTILATION(Reach.AXIS),
    /** The axis has a holding brake. */
    HOLDING_BRAKE(Reach.AXIS),
    /** The axis keeps its position when mains is off. */
    KEEP_ALIVE(Reach.AXIS),
    /** The axis shares a DC bus. */
    SHARED_BUS(Reach.AXIS),
    /** The axis belongs to a stop zone. */
    STOP_ZONE(Reach.AXIS);

    private final Reach reach;

    FlagAttribute(Reach reach) {
        this.reach = reach;
    }

    /** What it is an attribute of. */
    public Reach reach() {
        return reach;
    }
}
