package io.axiswright.engine.design;

/** The supply system at the machine, protective conductor not counted. */
public enum SupplySystem {
    /** One phase, line and neutral. */
    ONE_PHASE_TWO_WIRE,
    /** One phase with mid-point: two lines and neutral. */
    ONE_PHASE_THREE_WIRE,
    /** Three lines. */
    THREE_PHASE_THREE_WIRE,
    /** Three lines and neutral. */
    THREE_PHASE_FOUR_WIRE
}
