package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The control network the axes hang on.
 *
 * @param host the controlling computer
 * @param places where gateways may stand
 * @param route how cable lengths follow from positions
 * @param keep a layout that is there already and is changed only where that pays; none if absent
 * @param fixed axes whose gateway has to stand in a given place; none if absent
 * @param sparePorts drive ports every gateway leaves free for axes to come; none if absent
 * @param searchLimit how much work the search for the cheapest layout may do, counted so that the same design has the same
 *     layout on every machine: about as long on one core. 2 s if absent; 0 s leaves it to the quick search with its bound
 * @param reserved axes to come, for which ports are kept; none if absent
 * @param separations axes that must not, or had better not, share a gateway; none if absent
 * @param ways the ways cables are led along; as {@code route} measures from position to position if absent
 * @param tradeOff asks, with the layout, for the curve of its cost against a second measure; none if absent
 */
public record Network(
        Host host,
        @AnyOrder @Count(min = 1, max = 256) List<Place> places,
        RouteRule route,
        @Nullable KeptLayout keep,
        @AnyOrder @Count(max = 1024) @Nullable List<FixedPlace> fixed,
        @Bounds(min = 0, max = 63) @Nullable Integer sparePorts,
        @Bounds(min = 0, max = 30) @Nullable Time searchLimit,
        @AnyOrder @Count(max = 64) @Nullable List<ReservedAxis> reserved,
        @AnyOrder @Count(max = 256) @Nullable List<Separation> separations,
        @Nullable CableWays ways,
        @Nullable SecondMeasure tradeOff) {

    /** A network without growth, separations, cable ways and trade-off. */
    public Network(
            Host host,
            List<Place> places,
            RouteRule route,
            @Nullable KeptLayout keep,
            @Nullable List<FixedPlace> fixed,
            @Nullable Integer sparePorts,
            @Nullable Time searchLimit) {
        this(host, places, route, keep, fixed, sparePorts, searchLimit, null, null, null, null);
    }

    /** Keeps the lists from being changed. */
    public Network {
        places = List.copyOf(places);
        fixed = fixed == null ? null : List.copyOf(fixed);
        reserved = reserved == null ? null : List.copyOf(reserved);
        separations = separations == null ? null : List.copyOf(separations);
    }

    /** The axes to come, be they absent or none. */
    public List<ReservedAxis> reservedList() {
        return reserved == null ? List.of() : reserved;
    }

    /** The separations, be they absent or none. */
    public List<Separation> separationList() {
        return separations == null ? List.of() : separations;
    }

    /** The same network with other places. */
    public Network with(List<Place> others) {
        return new Network(
                host, others, route, keep, fixed, sparePorts, searchLimit, reserved, separations, ways, tradeOff);
    }
}
