package io.axiswright.engine.design;

/** The kinds of items a catalogue has. */
public enum ItemKind {
    /** Drive units. */
    DRIVE_UNIT,
    /** Holding brakes. */
    HOLDING_BRAKE,
    /** Gateways. */
    GATEWAY,
    /** 24 V supplies. */
    CONTROL_SUPPLY,
    /** Cables of fixed length. */
    CABLE_ASSEMBLY,
    /** Power cable by the metre. */
    BULK_CABLE,
    /** Fuses and breakers. */
    PROTECTIVE_DEVICE,
    /** Braking units. */
    BRAKING_UNIT,
    /** Ventilation kits. */
    VENTILATION_KIT,
    /** Foot kits. */
    FOOT_KIT,
    /** Fastening parts. */
    FASTENING_PART,
    /** Everything else. */
    ACCESSORY,
    /** Gear units. */
    GEAR_UNIT,
    /** Protection of 24 V output circuits. */
    OUTPUT_PROTECTION,
    /** Buffers of control supplies. */
    BUFFER_UNIT,
    /** Cable glands. */
    CABLE_GLAND,
    /** Supply disconnecting devices. */
    DISCONNECTOR
}
