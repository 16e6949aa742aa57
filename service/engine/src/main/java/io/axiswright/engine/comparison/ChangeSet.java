package io.axiswright.engine.comparison;

import java.util.List;

/**
 * What is tried as one: a single change of the caller, or the same change made at many places.
 *
 * @param id of the change, or of the group
 * @param changes places of the changes among all
 * @param words what was done, in words
 */
record ChangeSet(String id, List<Integer> changes, String words) {

    /** One change. */
    static ChangeSet single(int place, Difference change) {
        return new ChangeSet(id(place), List.of(place), ChangeWords.of(change));
    }

    /** What a change is called, by its place among them. */
    static String id(int place) {
        return "change-" + (place + 1);
    }

    /** Whether it is the same change at many places. */
    boolean isGroup() {
        return changes.size() > 1;
    }
}
