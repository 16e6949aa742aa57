package io.axiswright.engine.design;

/** Conductor insulation by its highest conductor temperature. */
public enum Insulation {
    /** Thermoplastic, 70 °C (IEC). */
    PVC_70,
    /** Thermosetting, 90 °C (IEC). */
    XLPE_90,
    /** 60 °C column of the NEC. */
    NEC_60,
    /** 75 °C column of the NEC. */
    NEC_75,
    /** 90 °C column of the NEC. */
    NEC_90
}
