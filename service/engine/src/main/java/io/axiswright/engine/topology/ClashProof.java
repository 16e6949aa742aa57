package io.axiswright.engine.topology;

/** How small a set of clashing limits is proven to be. */
public enum ClashProof {
    /** None of the limits can be left out, and limits of fewer kinds do not clash. */
    SMALLEST,
    /** None of the limits can be left out. */
    IRREDUCIBLE,
    /** The limits clash; whether all of them are needed for that was not proven within the search limit. */
    CLASHING,
    /** No limits are named: that they clash is not proven, or there is no gateway type that could be widened. */
    NONE
}
