package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Count;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The ways cables are led along on the machine: ducts, trays, drag chains. A cable goes from where it starts to a node, on
 * along the shortest ways to another node, and from there to where it ends; two things in the very same position need none.
 *
 * @param nodes where ways meet and where cables join them
 * @param edges the ways from node to node, along which cables go in either direction; all nodes must hang together
 * @param attachments which node a thing is joined to; the nearest, measured as the route is, if it is not among them
 */
public record CableWays(
        @AnyOrder @Count(min = 1, max = 512) List<WayNode> nodes,
        @AnyOrder @Count(max = 2048) List<WayEdge> edges,
        @AnyOrder @Count(max = 2048) @Nullable List<WayAttachment> attachments) {

    /** Keeps the lists from being changed. */
    public CableWays {
        nodes = List.copyOf(nodes);
        edges = List.copyOf(edges);
        attachments = attachments == null ? null : List.copyOf(attachments);
    }

    /** The attachments, be they absent or none. */
    public List<WayAttachment> attachmentList() {
        return attachments == null ? List.of() : attachments;
    }
}
