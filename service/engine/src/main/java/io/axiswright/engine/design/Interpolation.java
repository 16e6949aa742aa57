package io.axiswright.engine.design;

/** The smooth curve through positions over time. */
public enum Interpolation {
    /** Cubic spline: continuous acceleration inside, with a jump of it at both ends. */
    CUBIC_SPLINE,
    /** Quintic spline: continuous jerk and its derivative inside, no acceleration at the ends. */
    QUINTIC_SPLINE
}
