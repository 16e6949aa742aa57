package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Axes to come. The layout keeps drive ports, room in the trunks and command rate for them and shows where each would hang;
 * neither their drive units nor their cables are bought.
 *
 * @param id the caller's own name for it, unique among the axes and the reserved ones
 * @param ports drive ports to keep, one for each axis to come; 1 if absent
 * @param position where their drive units will stand; beside the gateway in {@code place} if absent
 * @param farCorner the drive units may stand anywhere in the box between {@code position} and this corner of it, so that the
 *     spur has to reach every corner; they stand at {@code position} if absent
 * @param place id of the place whose gateways keep the ports; any within reach if absent
 * @param spurCables ids of the spur cables that will do; any of the catalogue if absent
 * @param holdingBrake whether a gateway will switch a holding brake for each; it will not if absent
 * @param stopZone id of their stop zone; none if absent
 * @param commandRate commands each will be sent per second
 * @param controlCurrent 24 V current the control power keeps for each, brake included; none if absent
 */
public record ReservedAxis(
        String id,
        @Bounds(min = 1, max = 16) @Nullable Integer ports,
        @Nullable Position position,
        @Nullable Position farCorner,
        @Nullable String place,
        @AnyOrder @Count(min = 1, max = 256) @Nullable List<String> spurCables,
        @Nullable Boolean holdingBrake,
        @Nullable String stopZone,
        @Bounds(above = 0, max = 100000) Frequency commandRate,
        @Bounds(min = 0, max = 1000) @Nullable Current controlCurrent) {

    /** Keeps the list from being changed. */
    public ReservedAxis {
        spurCables = spurCables == null ? null : List.copyOf(spurCables);
    }

    /** How many axes are to come. */
    public int count() {
        return ports == null ? 1 : ports;
    }
}
