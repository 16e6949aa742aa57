package io.axiswright.engine.comparison;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.StopZone;
import java.util.Locale;
import java.util.Set;

/** The parts of a design that others refer to by an id. */
public enum NamedPart {
    /** An axis. */
    AXIS(Axis.class, Set.of("axis", "axes")),
    /** A stop zone. */
    STOP_ZONE(StopZone.class, Set.of("stopZone")),
    /** A place for gateways or the control supply. */
    PLACE(Place.class, Set.of("place", "furtherPlaces", "openPlaces", "stopPlace")),
    /** A port of the host. */
    HOST_PORT(HostPort.class, Set.of("hostPort"));

    private final Class<? extends Record> type;
    private final Set<String> references;

    NamedPart(Class<? extends Record> type, Set<String> references) {
        this.type = type;
        this.references = references;
    }

    /** One of them in words. */
    String called(String id) {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ') + " " + id;
    }

    /** The records that are such parts. */
    Class<? extends Record> type() {
        return type;
    }

    /** Whether a component of that name holds ids of such parts. */
    boolean isReference(String component) {
        return references.contains(component);
    }
}
