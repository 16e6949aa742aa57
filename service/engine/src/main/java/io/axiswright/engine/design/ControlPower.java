package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the 24 V DC control supply must meet.
 *
 * @param place id of the network place where the control supplies stand, unless another is cheaper
 * @param reserve capacity to keep free, as a fraction of the load
 * @param brakesReleaseTogether whether all holding brakes may be released at the same moment
 * @param fieldDevices sensors, valves and signals fed through the gateways; none if absent
 * @param keepAliveTime how long mains may be off while axes with a keep-alive feed keep their position; if absent, only the
 *     time they do is told
 * @param redundant whether one control supply may fail and the others still feed everything; it need not if absent
 * @param furtherPlaces ids of other network places where control supplies may stand; each stands where it and its 24 V cables
 *     cost least, at {@code place} of equals. Only there if absent
 */
public record ControlPower(
        String place,
        @Bounds(min = 0, max = 1) double reserve,
        boolean brakesReleaseTogether,
        @AnyOrder @Count(max = 1024) @Nullable List<FieldDevice> fieldDevices,
        @Bounds(min = 0, max = 1000000) @Nullable Time keepAliveTime,
        @Nullable Boolean redundant,
        @AnyOrder @Count(max = 16) @Nullable List<String> furtherPlaces) {

    /** Keeps the lists from being changed. */
    public ControlPower {
        fieldDevices = fieldDevices == null ? null : List.copyOf(fieldDevices);
        furtherPlaces = furtherPlaces == null ? null : List.copyOf(furtherPlaces);
    }

    /** Control power without field devices, keep-alive time and redundancy. */
    public ControlPower(String place, double reserve, boolean brakesReleaseTogether) {
        this(place, reserve, brakesReleaseTogether, null, null, null, null);
    }

    /** Its field devices, be they absent or none. */
    public List<FieldDevice> fieldDeviceList() {
        return fieldDevices == null ? List.of() : fieldDevices;
    }

    /** The other places, be they absent or none. */
    public List<String> furtherPlaceList() {
        return furtherPlaces == null ? List.of() : furtherPlaces;
    }

    /** Whether one supply may fail. */
    public boolean isRedundant() {
        return Boolean.TRUE.equals(redundant);
    }
}
