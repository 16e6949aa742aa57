package io.axiswright.engine.braking;

import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.StopZone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The axes on one DC bus.
 *
 * @param id name of the group, or id of the one axis on a bus of its own
 * @param shared whether the caller named the group
 * @param axes its axes, in the request's order; at least one
 */
record BusGroup(String id, boolean shared, List<BrakingAxis> axes) {

    /** One stop in five minutes where the design does not say. */
    private static final double USUAL_STOPS_PER_HOUR = 12;

    private record Key(String id, boolean shared) {}

    /** All buses, in the order of their first axes. Drive units share a bus only where the caller says so. */
    static List<BusGroup> of(List<BrakingAxis> axes) {
        Map<Key, List<BrakingAxis>> byKey = new LinkedHashMap<>();
        for (BrakingAxis axis : axes) {
            String group = axis.busGroup();
            Key key = group == null ? new Key(axis.id(), false) : new Key(group, true);
            byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(axis);
        }
        return byKey.entrySet().stream()
                .map(e -> new BusGroup(e.getKey().id(), e.getKey().shared(), e.getValue()))
                .toList();
    }

    /** The bus at high line. */
    Bus bus(Mains mains) {
        return bus(RectifiedVoltage.nominal(axes, mains) * (1 + mains.highTolerance()));
    }

    /** The bus at a rectified voltage in V: capacitances add, the first drive unit to trip counts. */
    Bus bus(double floor) {
        double capacitance = axes.stream()
                .mapToDouble(a -> a.driveUnit().busCapacitance().si())
                .sum();
        double trip = axes.stream()
                .mapToDouble(a -> a.driveUnit().busTripVoltage().si())
                .min()
                .orElseThrow();
        return Bus.of(capacitance, floor, trip);
    }

    /** The most stops an hour any of its stop zones may have to make. */
    double stopsPerHour(List<StopZone> zones) {
        return zones.stream()
                .filter(zone -> axes.stream().anyMatch(axis -> zone.id().equals(axis.stopZone())))
                .mapToDouble(zone -> Objects.requireNonNullElse(zone.stopsPerHour(), USUAL_STOPS_PER_HOUR))
                .max()
                .orElse(0);
    }

    /** JSON Pointer to its first axis in the design. */
    String pointer() {
        return axes.getFirst().pointer();
    }
}
