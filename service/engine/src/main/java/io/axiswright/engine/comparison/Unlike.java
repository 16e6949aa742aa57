package io.axiswright.engine.comparison;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The places at which two results are unlike, for quick questions about one place. */
final class Unlike {

    /** What a design without meaning has instead of a result. */
    static final Unlike EVERYWHERE = new Unlike(new TreeSet<>(List.of("")));

    private final TreeSet<String> places;

    private Unlike(TreeSet<String> places) {
        this.places = places;
    }

    /** Where results of these differences are unlike. */
    static Unlike of(List<Difference> differences) {
        return new Unlike(differences.stream().map(Difference::place).collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Whether anything differs at the place, in it, or around it. */
    boolean at(String place) {
        String inside = places.ceiling(place + "/");
        if (places.contains(place) || inside != null && inside.startsWith(place + "/")) {
            return true;
        }
        for (int cut = place.lastIndexOf('/'); cut >= 0; cut = place.lastIndexOf('/', cut - 1)) {
            if (places.contains(place.substring(0, cut))) {
                return true;
            }
        }
        return false;
    }
}
