package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.Layout.Node;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The layout problem in whole numbers, free of catalogue and geometry: what the solvers see.
 *
 * @param axes the axes
 * @param types the gateway types
 * @param room gateways that fit in each place
 * @param portRate commands a host port carries, in the rate unit
 * @param host links from the host (row 0) to the places
 * @param trunk links from place to place
 * @param spur links from axes (rows) to places
 * @param separations which axes are to hang on gateways of their own
 * @param gatewayLimit most gateways a layout may have, beside what places and trunks hold
 */
record LayoutModel(
        List<Axis> axes,
        List<Type> types,
        int[] room,
        long[] portRate,
        LinkTable host,
        LinkTable trunk,
        LinkTable spur,
        Separations separations,
        int gatewayLimit) {

    /** The host, where a link comes from a place or from there. */
    static final int HOST = -1;

    /** As many gateways as places and trunks hold. */
    static final int NO_LIMIT = Integer.MAX_VALUE;

    /** A problem without wishes as to which axes hang together and how many gateways there are. */
    LayoutModel(
            List<Axis> axes,
            List<Type> types,
            int[] room,
            long[] portRate,
            LinkTable host,
            LinkTable trunk,
            LinkTable spur) {
        this(axes, types, room, portRate, host, trunk, spur, Separations.none(), NO_LIMIT);
    }

    /** The same problem with no more than so many gateways. */
    LayoutModel withGateways(int most) {
        return new LayoutModel(axes, types, room, portRate, host, trunk, spur, separations, most);
    }

    /** The same problem with gateways so dear that one pays only where it saves a spur from every port of another. */
    LayoutModel withDearGateways() {
        long dearest = 0;
        for (int axis = 0; axis < axes.size(); axis++) {
            for (int place = 0; place < places(); place++) {
                dearest = spur.reaches(axis, place) ? Math.max(dearest, spur.cost()[axis][place]) : dearest;
            }
        }
        long more = dearest * mostDrivePorts();
        return new LayoutModel(
                axes,
                types.stream().map(type -> type.dearer(more)).toList(),
                room,
                portRate,
                host,
                trunk,
                spur,
                separations,
                gatewayLimit);
    }

    /** Whether gateways are limited by more than places and trunks. */
    boolean limitsGateways() {
        return gatewayLimit < NO_LIMIT;
    }

    /** The layout, unless there is none or it has too many gateways. */
    @Nullable
    Layout within(@Nullable Layout layout) {
        return layout == null || layout.nodes().size() > gatewayLimit ? null : layout;
    }

    /** An axis: whether a gateway switches its brake, its stop zone's number (−1: none), its command rate. */
    record Axis(boolean brake, int zone, long rate) {}

    /** A gateway type; {@code directRow} of it may be coupled directly in a row, 1 if none can. */
    record Type(long price, int drivePorts, int chainDepth, int brakeOutputs, StopScope scope, int directRow) {

        /** A type that joins others by cables only. */
        Type(long price, int drivePorts, int chainDepth, int brakeOutputs, StopScope scope) {
            this(price, drivePorts, chainDepth, brakeOutputs, scope, 1);
        }

        Type dearer(long more) {
            return new Type(price + more, drivePorts, chainDepth, brakeOutputs, scope, directRow);
        }

        Type withDrivePorts(int ports) {
            return new Type(price, ports, chainDepth, brakeOutputs, scope, directRow);
        }

        Type withChainDepth(int depth) {
            return new Type(price, drivePorts, depth, brakeOutputs, scope, directRow);
        }

        Type withBrakeOutputs(int outputs) {
            return new Type(price, drivePorts, chainDepth, outputs, scope, directRow);
        }
    }

    int places() {
        return room.length;
    }

    int zones() {
        return axes.stream().mapToInt(Axis::zone).max().orElse(-1) + 1;
    }

    int zoneSize(int zone) {
        return (int) axes.stream().filter(axis -> axis.zone() == zone).count();
    }

    int zoneBrakes(int zone) {
        return (int) axes.stream()
                .filter(axis -> axis.zone() == zone && axis.brake())
                .count();
    }

    int brakes() {
        return (int) axes.stream().filter(Axis::brake).count();
    }

    long totalRate() {
        return axes.stream().mapToLong(Axis::rate).sum();
    }

    int mostDrivePorts() {
        return types.stream().mapToInt(Type::drivePorts).max().orElse(0);
    }

    int mostBrakeOutputs() {
        return types.stream().mapToInt(Type::brakeOutputs).max().orElse(0);
    }

    int deepestChain() {
        return types.stream().mapToInt(Type::chainDepth).max().orElse(0);
    }

    /** Most gateways that any type couples directly in a row; 1 if none can. */
    int longestRow() {
        int longest = 1;
        for (Type type : types) {
            longest = Math.max(longest, type.directRow());
        }
        return longest;
    }

    /** Whether any type couples directly. */
    boolean couples() {
        return longestRow() > 1;
    }

    /**
     * A gateway's place in its row of directly coupled ones: 1 if a cable leads to it. Rows are as long as they may be from
     * the host on, which leaves the fewest cables.
     *
     * @param before the gateway before it in the trunk; null next to the host
     * @param rowBefore the place of that in its row
     */
    int row(@Nullable Node before, Node node, int rowBefore) {
        if (before == null || before.place != node.place || before.type != node.type) {
            return 1;
        }
        return rowBefore < types.get(node.type).directRow() ? rowBefore + 1 : 1;
    }

    /** The least a link to a place costs and measures: nothing within a place where gateways can be coupled directly. */
    Score link(int from, int to) {
        if (from == to && couples()) {
            return Score.ZERO;
        }
        LinkTable table = from == HOST ? host : trunk;
        int row = from == HOST ? 0 : from;
        return new Score(table.cost()[row][to], table.length()[row][to]);
    }

    long fastestPort() {
        return Arrays.stream(portRate).max().orElse(0);
    }

    int totalRoom() {
        return Arrays.stream(room).sum();
    }

    /** Gateways there can be at most: what fits in the places, what the trunks hold, and what is allowed. */
    int mostGateways() {
        return Math.min(gatewayLimit, Math.min(totalRoom(), portRate.length * deepestChain()));
    }

    /** Whether every type has a stop input, so that no gateway mixes stop zones. */
    boolean everyGatewayInOneZone() {
        return types.stream().noneMatch(type -> type.scope() == StopScope.NONE);
    }

    /** Whether every type's stop input acts on its trunk, so that no trunk mixes stop zones. */
    boolean everyTrunkInOneZone() {
        return types.stream().allMatch(type -> type.scope() == StopScope.TRUNK);
    }

    /** Whether any type restricts the stop zones and there are two that could be mixed. */
    boolean zonesMatter() {
        return zones() > 1 && types.stream().anyMatch(type -> type.scope() != StopScope.NONE);
    }

    /** A number for every host port; ports of one number may be exchanged: their rates are equal, or no rate can bind. */
    long[] portKinds() {
        return ratesMatter() ? portRate : new long[portRate.length];
    }

    /** Whether the command rate can bind at all: else every port is as good as any other. */
    boolean ratesMatter() {
        long heaviest = axes.stream()
                .map(Axis::rate)
                .sorted(java.util.Comparator.reverseOrder())
                .limit((long) mostDrivePorts() * deepestChain())
                .mapToLong(Long::longValue)
                .sum();
        return heaviest > Arrays.stream(portRate).min().orElse(0);
    }
}
