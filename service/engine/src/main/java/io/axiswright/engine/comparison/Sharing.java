package io.axiswright.engine.comparison;

import java.util.ArrayList;
import java.util.List;

/**
 * Two parts of one design that stand for one of the other.
 *
 * @param whole id of the one
 * @param parts ids of the two
 * @param identifiedBy what tells it, in words that hold in either direction
 */
record Sharing(String whole, List<String> parts, List<String> identifiedBy) {

    /** All ids. */
    List<String> ids() {
        List<String> ids = new ArrayList<>(parts);
        ids.add(whole);
        return ids;
    }
}
