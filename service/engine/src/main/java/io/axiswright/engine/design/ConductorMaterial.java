package io.axiswright.engine.design;

/** What a conductor is made of. */
public enum ConductorMaterial {
    /** Copper. */
    COPPER,
    /** Aluminium; copper-clad aluminium counts as it. */
    ALUMINIUM
}
