package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A gateway as a point of the 24 V network.
 *
 * @param id its name, unique among the nodes
 * @param gateway its type
 * @param chain its chain: the host port its trunk starts at
 * @param depth its place on the chain, 1 next to the host
 * @param upstream id of the gateway of the same chain it is fed from; fed from the control supply if absent
 * @param feedLength length of cable the way from there needs
 * @param directLength length of cable the way from the control supply straight to it needs
 * @param loads the axes on its spurs
 * @param devices the field devices fed through it
 * @param otherWays the way straight to it from a control supply at each of the further places; none if absent
 * @param reservedCurrent current kept for axes to come, taken at the gateway; none if absent
 */
public record ControlNode(
        String id,
        GatewayType gateway,
        String chain,
        @Bounds(min = 1, max = 64) int depth,
        @Nullable String upstream,
        @Bounds(min = 0, max = 1000) Length feedLength,
        @Bounds(min = 0, max = 1000) Length directLength,
        @Count(max = 256) List<ControlLoad> loads,
        @Count(max = 1024) List<FieldLoad> devices,
        @Count(max = 16) @Nullable List<SupplyWay> otherWays,
        @Bounds(min = 0) @Nullable Current reservedCurrent) {

    /** Keeps the lists from being changed. */
    public ControlNode {
        loads = List.copyOf(loads);
        devices = List.copyOf(devices);
        otherWays = otherWays == null ? null : List.copyOf(otherWays);
    }

    /** A gateway that keeps nothing for axes to come. */
    public ControlNode(
            String id,
            GatewayType gateway,
            String chain,
            int depth,
            @Nullable String upstream,
            Length feedLength,
            Length directLength,
            List<ControlLoad> loads,
            List<FieldLoad> devices) {
        this(id, gateway, chain, depth, upstream, feedLength, directLength, loads, devices, null, null);
    }

    /** A gateway without field devices, as far from the control supply as from where it is fed. */
    public ControlNode(
            String id,
            GatewayType gateway,
            String chain,
            int depth,
            @Nullable String upstream,
            Length feedLength,
            List<ControlLoad> loads) {
        this(id, gateway, chain, depth, upstream, feedLength, feedLength, loads, List.of(), null, null);
    }

    /** The same fed straight from the control supply. */
    ControlNode fedDirectly() {
        return new ControlNode(
                id,
                gateway,
                chain,
                depth,
                null,
                directLength,
                directLength,
                loads,
                devices,
                otherWays,
                reservedCurrent);
    }

    /** The same with control supplies at a further place. */
    ControlNode fedFrom(String place) {
        Length direct = wayList().stream()
                .filter(way -> way.place().equals(place))
                .map(SupplyWay::length)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("requests without a way are refused"));
        Length feed = upstream == null ? direct : feedLength;
        return new ControlNode(
                id, gateway, chain, depth, upstream, feed, direct, loads, devices, otherWays, reservedCurrent);
    }

    /** The ways from further places, be they absent or none. */
    List<SupplyWay> wayList() {
        return otherWays == null ? List.of() : otherWays;
    }
}
