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
        @Bounds(min = 0) @Nullable Current reservedCurrent) {

    /** Keeps the lists from being changed. */
    public ControlNode {
        loads = List.copyOf(loads);
        devices = List.copyOf(devices);
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
        this(id, gateway, chain, depth, upstream, feedLength, directLength, loads, devices, null);
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
        this(id, gateway, chain, depth, upstream, feedLength, feedLength, loads, List.of());
    }

    /** The same fed straight from the control supply. */
    ControlNode fedDirectly() {
        return new ControlNode(
                id, gateway, chain, depth, null, directLength, directLength, loads, devices, reservedCurrent);
    }
}
