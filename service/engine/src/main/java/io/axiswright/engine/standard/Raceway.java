package io.axiswright.engine.standard;

/** What a raceway is made of; steel raises the reactance, aluminium the resistance of the conductors in it. */
public enum Raceway {
    /** Plastic. */
    PVC,
    /** Aluminium. */
    ALUMINIUM,
    /** Steel. */
    STEEL
}
