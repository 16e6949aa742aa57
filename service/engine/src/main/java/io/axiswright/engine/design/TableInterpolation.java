package io.axiswright.engine.design;

/** How a curve runs between the points of a table. */
public enum TableInterpolation {
    /** Straight from point to point. */
    LINEAR,
    /**
     * Cubic in every interval, with even slopes through the points and never beyond neighbouring points (Fritsch and Butland,
     * A method for constructing local monotone piecewise cubic interpolants, 1984).
     */
    MONOTONE_CUBIC
}
