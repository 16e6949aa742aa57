package io.axiswright.engine.comparison;

/**
 * The part that changes of the caller have in a consequence.
 *
 * @param what the changes
 * @param place of the set they were tried in, among all that were
 * @param role what they do
 * @param canBeTakenBack whether the second design has a meaning without them
 */
record Part(ChangeSet what, int place, Role role, boolean canBeTakenBack) {

    /** Whether they bring the consequence alone. */
    boolean brings() {
        return role == Role.SUFFICIENT || role == Role.NECESSARY_AND_SUFFICIENT;
    }

    /** The same as callers are told it. */
    Cause named() {
        return new Cause(what.id(), role);
    }
}
