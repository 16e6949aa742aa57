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
    E,
    /** Single-core cables in free air or on a tray, touching: two side by side, or three in trefoil; from 25 mm² up. */
    F
}
