package io.axiswright.engine.design;

/** Which motion the cycle of a winder states. */
public enum WinderMotion {
    /** That of the material; moves are lengths. */
    LINE,
    /** That of the roll; moves are angles. */
    SHAFT
}
