package io.axiswright.engine.study;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CableRoute;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Enclosure;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.graph.Components;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The lists of a design whose order lists of the answer follow. */
enum CallersList {
    /** Axes; what tells of several stands where the first of them does. */
    AXES(
            design -> design.axes().stream().map(Axis::id),
            Set.of("axes", "spurs", "powerLosses", "groups", "buses"),
            Set.of("axis", "axes")),
    /** Stop zones. */
    STOP_ZONES(
            design -> design.stopZones().stream().map(StopZone::id),
            Set.of("zones", "reliefs", "unaidedStops"),
            Set.of("zone")),
    /** Ports of the host. */
    HOST_PORTS(CallersList::hostPorts, Set.of("spareHostPorts"), Set.of()),
    /** Enclosures. */
    ENCLOSURES(
            design -> installed(design, Installation::panels).map(Enclosure::place),
            Set.of("enclosures"),
            Set.of("place")),
    /** Routes of power cables. */
    CABLE_ROUTES(design -> installed(design, Installation::routes).map(CableRoute::id), Set.of("routes"), Set.of("id"));

    private final Function<Design, Stream<String>> ids;
    private final Set<String> followers;
    private final Set<String> naming;

    CallersList(Function<Design, Stream<String>> ids, Set<String> followers, Set<String> naming) {
        this.ids = ids;
        this.followers = followers;
        this.naming = naming;
    }

    private static Stream<String> hostPorts(Design design) {
        Network network = design.network();
        return network == null ? Stream.of() : network.host().ports().stream().map(HostPort::id);
    }

    private static <T> Stream<T> installed(Design design, Function<Installation, List<T>> list) {
        Installation installation = design.installation();
        return installation == null ? Stream.of() : list.apply(installation).stream();
    }

    /** Ids of its elements, as the caller lists them. */
    List<String> ids(Design design) {
        return ids.apply(design).toList();
    }

    /** The one whose order a component of an answer follows; null if there is none. */
    static @Nullable CallersList followedBy(RecordComponent component) {
        if (component.getGenericType() instanceof ParameterizedType list
                && list.getActualTypeArguments()[0] instanceof Class<?> element) {
            for (CallersList one : values()) {
                if (one.followers.contains(component.getName()) && one.isNamed(element)) {
                    return one;
                }
            }
        }
        return null;
    }

    private boolean isNamed(Class<?> element) {
        return element.isRecord()
                ? Stream.of(element.getRecordComponents()).anyMatch(c -> naming.contains(c.getName()))
                : naming.isEmpty();
    }

    /** Where an element of the answer stands among the ids: with the first of those it tells of. */
    int place(Object element, Map<String, Integer> places) {
        return told(element)
                .mapToInt(id -> places.getOrDefault(id, places.size()))
                .min()
                .orElse(places.size());
    }

    private Stream<String> told(Object element) {
        if (element instanceof String id) {
            return Stream.of(id);
        }
        Components components = Components.of(element);
        return naming.stream()
                .filter(name -> components.place(name) >= 0)
                .map(name -> components.get(element, components.place(name)))
                .flatMap(value -> value instanceof List<?> several ? several.stream() : Stream.ofNullable(value))
                .map(String.class::cast);
    }
}
