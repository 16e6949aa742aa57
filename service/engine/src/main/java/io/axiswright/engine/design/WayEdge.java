package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A cable way between two nodes.
 *
 * @param from id of the node at one end
 * @param to id of the node at the other
 * @param length how long it is; straight from node to node if absent
 */
public record WayEdge(
        String from, String to, @Bounds(min = 0) @Nullable Length length) {}
