package io.axiswright.engine.topology;

/** The hard limits of a layout. */
public enum LimitKind {
    /** Spurs one gateway serves. */
    DRIVE_PORTS,
    /** Holding brakes one gateway switches. */
    BRAKE_OUTPUTS,
    /** Gateways in one trunk; the least depth of the types on it counts. */
    CHAIN_DEPTH,
    /** Trunks of the host. */
    HOST_PORTS,
    /** Commands per second of the axes on one host port. */
    COMMAND_RATE,
    /** Gateways that fit in one place. */
    PLACE_ROOM,
    /** Axes that one stop input acts on belong to one stop zone. */
    STOP_ZONE,
    /** The longest spur cable. */
    SPUR_LENGTH,
    /** The longest cable from gateway to gateway. */
    TRUNK_LENGTH,
    /** The longest cable from the host to a gateway. */
    HOST_LENGTH,
    /** Drive ports every gateway leaves free. */
    SPARE_PORTS,
    /** The one place an axis has to be connected in. */
    FIXED_PLACE,
    /** Axes that must not share a gateway. */
    SEPARATION,
    /** Drive ports kept for axes to come. */
    RESERVED_PORTS,
    /** Places where gateways may stand. */
    PLACES
}
