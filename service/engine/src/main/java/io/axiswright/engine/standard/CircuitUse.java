package io.axiswright.engine.standard;

/** What a circuit does on the machine; the smallest permitted conductor depends on it. */
public enum CircuitUse {
    /** Feeds energy to drives, supplies and heaters. */
    POWER,
    /** Controls: 24 V supplies of gateways, brakes, sensors. */
    CONTROL
}
