package io.axiswright.engine.comparison;

import java.util.List;
import java.util.TreeSet;

/** The places at which two results are unlike, for quick questions about one place. */
final class Unlike {

    private final TreeSet<String> places = new TreeSet<>();

    Unlike(List<Difference> differences) {
        differences.forEach(d -> places.add(d.place()));
    }

    /** Whether anything differs at the place, in it, or around it. */
    boolean at(String place) {
        String inside = places.ceiling(place + "/");
        if (places.contains(place) || inside != null && inside.startsWith(place + "/")) {
            return true;
        }
        for (int cut = place.lastIndexOf('/'); cut > 0; cut = place.lastIndexOf('/', cut - 1)) {
            if (places.contains(place.substring(0, cut))) {
                return true;
            }
        }
        return false;
    }
}
