package io.axiswright.engine.topology;

/** What differs between a kept layout and a new one. */
public enum LayoutChangeKind {
    /** An axis hangs on a gateway in another place: the price of a move is due. */
    AXIS_MOVED,
    /** An axis hangs on another gateway in the same place. */
    AXIS_REPLUGGED,
    /** An axis the kept layout does not know. */
    AXIS_ADDED,
    /** An axis of the kept layout that is no longer in the design. */
    AXIS_REMOVED,
    /** A gateway where there was none. */
    GATEWAY_ADDED,
    /** A gateway that goes. */
    GATEWAY_REMOVED,
    /** A gateway that becomes one of another type. */
    GATEWAY_RETYPED,
    /** A gateway that is linked to another host port, or comes after another gateway in its trunk. */
    GATEWAY_RELINKED
}
