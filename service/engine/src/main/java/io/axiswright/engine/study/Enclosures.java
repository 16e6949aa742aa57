package io.axiswright.engine.study;

import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The enclosures of a machine by where they stand; what stands at the same position is inside the same one. */
final class Enclosures {

    private static final String MAINS_PANEL = "the mains panel";

    private final Map<Position, String> names = new HashMap<>();

    Enclosures(Design design) {
        names.put(Needed.installation(design).mainsPanel(), MAINS_PANEL);
        List<String> open = Needed.wiring(design).openPlaceList();
        for (Place place : Needed.network(design).places()) {
            if (!open.contains(place.id())) {
                names.putIfAbsent(place.position(), place.id());
            }
        }
    }

    /** The enclosure at a position that a cable from outside enters; none if there is none. */
    List<String> entered(Position to) {
        return at(to).toList();
    }

    /** The enclosures a cable between two positions enters; none if both are inside the same. */
    List<String> entered(Position from, Position to) {
        return from.equals(to)
                ? List.of()
                : Stream.of(from, to).flatMap(this::at).toList();
    }

    private Stream<String> at(Position position) {
        String name = names.get(position);
        return name == null ? Stream.empty() : Stream.of(name);
    }
}
