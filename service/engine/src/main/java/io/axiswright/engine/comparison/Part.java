package io.axiswright.engine.comparison;

/**
 * The part an input change has in a consequence.
 *
 * @param change place of the change among the changes
 * @param role what it does
 */
record Part(int change, Role role) {

    /** The same as callers are told it. */
    Cause named() {
        return new Cause(Trials.id(change), role);
    }
}
