package io.axiswright.engine.comparison;

import java.util.List;
import java.util.TreeSet;

/** The places at which two results are unlike, for quick questions about one place. */
final class Unlike {

    private final TreeSet<String> pointers = new TreeSet<>();

    Unlike(List<Difference> differences) {
        differences.forEach(d -> pointers.add(d.pointer()));
    }

    /** Whether anything differs at the place, in it, or around it. */
    boolean at(String pointer) {
        String inside = pointers.ceiling(pointer + "/");
        if (pointers.contains(pointer) || inside != null && inside.startsWith(pointer + "/")) {
            return true;
        }
        for (int cut = pointer.lastIndexOf('/'); cut > 0; cut = pointer.lastIndexOf('/', cut - 1)) {
            if (pointers.contains(pointer.substring(0, cut))) {
                return true;
            }
        }
        return false;
    }
}
