package io.axiswright.engine.design;

/** The electrical code a study follows. */
public enum CodeBasis {
    /** North America: NFPA 79 on the machine, NFPA 70 (NEC) up to it. */
    NFPA_79,
    /** IEC 60204-1 on the machine, IEC 60364 up to it. */
    IEC_60204_1
}
