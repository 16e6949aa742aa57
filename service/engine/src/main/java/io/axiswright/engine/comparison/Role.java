package io.axiswright.engine.comparison;

/** What a single input change does to a consequence. */
public enum Role {
    /** Alone it brings the consequence, and without it the consequence goes. */
    NECESSARY_AND_SUFFICIENT,
    /** Without it the consequence goes; alone it does not bring it, be it that the design with nothing else has no meaning. */
    NECESSARY,
    /** Alone it brings the consequence; other changes would bring it too, or the design has no meaning without it. */
    SUFFICIENT,
    /** Without it the consequence is another one, but does not go. */
    CONTRIBUTING
}
