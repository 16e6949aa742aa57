package io.axiswright.engine.comparison;

/**
 * The part an input change has in a consequence.
 *
 * @param change place of the change among the changes
 * @param role what it does
 * @param canBeTakenBack whether the second design has a meaning without it
 */
record Part(int change, Role role, boolean canBeTakenBack) {

    /** Whether the change brings the consequence alone. */
    boolean brings() {
        return role == Role.SUFFICIENT || role == Role.NECESSARY_AND_SUFFICIENT;
    }

    /** The same as callers are told it. */
    Cause named() {
        return new Cause(Trials.id(change), role);
    }
}
