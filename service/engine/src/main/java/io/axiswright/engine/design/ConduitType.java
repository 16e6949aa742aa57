package io.axiswright.engine.design;

/** Conduits whose inner diameters the tables know. */
public enum ConduitType {
    /** Electrical metallic tubing (NFPA 70 Article 358). */
    EMT,
    /** Liquidtight flexible metal conduit (NFPA 70 Article 350). */
    LFMC
}
