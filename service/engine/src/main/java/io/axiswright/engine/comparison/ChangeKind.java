package io.axiswright.engine.comparison;

/** What happened to a value between two documents. */
public enum ChangeKind {
    /** It is only in the second. */
    ADDED,
    /** It is only in the first. */
    REMOVED,
    /** It is in both and differs. */
    CHANGED
}
