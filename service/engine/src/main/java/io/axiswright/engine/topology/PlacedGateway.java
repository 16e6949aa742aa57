package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.design.KeptGateway;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A gateway of the layout. Gateways are numbered by host port, then by depth.
 *
 * @param id "G1", "G2" …
 * @param gatewayType id of its type in the catalogue
 * @param place id of the place where it stands
 * @param hostPort id of the host port its trunk starts from
 * @param depth its place in the trunk, 1 next to the host
 * @param upstream id of the gateway before it; absent next to the host
 * @param linkCable id of the cable assembly that joins it to the host or to the gateway before it; absent where it is coupled
 *     directly to that gateway
 * @param linkRouteLength length the route of that cable asks for; 0 m without a cable
 * @param linkCableLength length of that cable assembly, of two joined together; 0 m without a cable
 * @param linkExtension what leads on from that cable where no single one reaches; absent if it does
 * @param spurs cables to its drive units, in the order of the axes
 * @param spareDrivePorts drive ports left free, those kept for axes to come among them
 * @param spareBrakeOutputs brake outputs left free, those kept for axes to come among them
 * @param reserved which of the free ports are kept for axes to come; absent if none
 */
public record PlacedGateway(
        String id,
        String gatewayType,
        String place,
        String hostPort,
        @Bounds(min = 1) int depth,
        @Nullable String upstream,
        @Nullable String linkCable,
        Length linkRouteLength,
        Length linkCableLength,
        @Nullable CableExtension linkExtension,
        List<SpurLink> spurs,
        @Bounds(min = 0) int spareDrivePorts,
        @Bounds(min = 0) int spareBrakeOutputs,
        @Nullable List<ReservedPorts> reserved) {

    /** Keeps the lists from being changed. */
    public PlacedGateway {
        spurs = List.copyOf(spurs);
        reserved = reserved == null ? null : List.copyOf(reserved);
    }

    /** The ports kept for axes to come, be they absent or none. */
    public List<ReservedPorts> reservedList() {
        return reserved == null ? List.of() : reserved;
    }

    /** Ids of all that is bought with it: itself, its link and its spurs. */
    Stream<String> bought() {
        return Stream.concat(
                Stream.concat(Stream.of(gatewayType), cable(linkCable, linkExtension)),
                spurs.stream().flatMap(spur -> cable(spur.cable(), spur.extension())));
    }

    private static Stream<String> cable(@Nullable String cable, @Nullable CableExtension extension) {
        return extension == null
                ? Stream.ofNullable(cable)
                : Stream.concat(Stream.ofNullable(cable), Stream.of(extension.coupler(), extension.cable()));
    }

    /** The form in which a design keeps it; axes to come are left out. */
    KeptGateway kept() {
        return new KeptGateway(
                gatewayType,
                place,
                hostPort,
                depth,
                spurs.stream().map(SpurLink::axis).toList());
    }
}
