package io.axiswright.engine.duty;

/** What came of the search for the most an axis can do. */
public enum ReserveVerdict {
    /** There is a most: every limit holds up to it, and the one named breaks beyond it. */
    BOUND,
    /** Every limit holds as far as is searched. */
    UNBOUND,
    /** As asked some limit breaks, and the search the other way found no state in which all hold. */
    NEVER_HOLDS,
    /** The question has no meaning for this cycle. */
    NOT_APPLICABLE
}
