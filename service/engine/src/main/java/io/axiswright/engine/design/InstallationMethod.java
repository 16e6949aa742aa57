package io.axiswright.engine.design;

/** Reference installation methods of IEC 60364-5-52; raceway methods also stand for NEC raceways. */
public enum InstallationMethod {
    /** Single cores in conduit or trunking. */
    B1,
    /** Multicore cable in conduit or trunking. */
    B2,
    /** Cable on a surface. */
    C,
    /** Multicore cable in free air or on a tray. */
    E
}
