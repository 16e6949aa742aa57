package io.axiswright.engine.topology;

import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Frequency;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the network has to know of an axis.
 *
 * @param id the caller's own name for it, unique
 * @param position where its drive unit stands
 * @param stopZone id of its stop zone; none if absent
 * @param holdingBrake whether a gateway has to switch a holding brake for it
 * @param commandRate commands it is sent per second
 * @param index its place among the design's axes, or among the reserved ones, for pointers
 * @param reserved what is kept for it, if it is yet to come
 */
public record NetworkAxis(
        String id,
        Position position,
        @Nullable String stopZone,
        boolean holdingBrake,
        @Bounds(above = 0, max = 100000) Frequency commandRate,
        @Bounds(min = 0) int index,
        @Nullable ReservedAxis reserved) {

    /** An axis that is there. */
    public NetworkAxis(
            String id,
            Position position,
            @Nullable String stopZone,
            boolean holdingBrake,
            Frequency commandRate,
            int index) {
        this(id, position, stopZone, holdingBrake, commandRate, index, null);
    }

    /** The axes of a network that are yet to come: one for every drive port to keep. */
    public static List<NetworkAxis> toCome(Network network) {
        List<NetworkAxis> axes = new ArrayList<>();
        List<ReservedAxis> reserved = network.reservedList();
        for (int index = 0; index < reserved.size(); index++) {
            ReservedAxis one = reserved.get(index);
            for (int port = 1; port <= one.count(); port++) {
                axes.add(new NetworkAxis(
                        one.count() == 1 ? one.id() : one.id() + " " + port,
                        one.position() == null ? besideTheGateway(network, one) : one.position(),
                        one.stopZone(),
                        Boolean.TRUE.equals(one.holdingBrake()),
                        one.commandRate(),
                        index,
                        one));
            }
        }
        return axes;
    }

    private static Position besideTheGateway(Network network, ReservedAxis reserved) {
        return network.places().stream()
                .filter(place -> place.id().equals(reserved.place()))
                .findFirst()
                .orElseThrow()
                .position();
    }

    /** Whether its port is only kept: neither its drive unit nor its cable is bought. */
    boolean isToCome() {
        return reserved != null;
    }

    /** JSON Pointer to the axis in the request. */
    String pointer() {
        return (isToCome() ? "/design/network/reserved/" : "/design/axes/") + index;
    }

    /** JSON Pointer to what says where its drive unit stands. */
    String positionPointer() {
        return pointer() + (reserved != null && reserved.position() == null ? "/place" : "/position");
    }
}
