package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What else is to be known to bring cables in and join things.
 *
 * @param openPlaces ids of network places without an enclosure, where cables need no glands; every place is an enclosure if
 *     absent. The mains panel always is one; a place at its very position is inside it
 * @param stopPlace id of the network place where stop demands come from; that of the control supplies if absent
 * @param resistorRoute length of cable from a braking unit to its resistor; the shortest cable there is serves if absent
 */
public record Wiring(
        @AnyOrder @Count(max = 256) @Nullable List<String> openPlaces,
        @Nullable String stopPlace,
        @Bounds(above = 0, max = 1000) @Nullable Length resistorRoute) {

    /** What holds where a design states nothing. */
    public static final Wiring UNSTATED = new Wiring(null, null, null);

    /** Keeps the list from being changed. */
    public Wiring {
        openPlaces = openPlaces == null ? null : List.copyOf(openPlaces);
    }

    /** Ids of the places without an enclosure; empty if none are stated. */
    public List<String> openPlaceList() {
        return openPlaces == null ? List.of() : openPlaces;
    }
}
