package io.axiswright.engine.design;

import org.jspecify.annotations.Nullable;

/**
 * A thing and the node of the cable ways it is joined to. The same holds for whatever else stands in the same position.
 *
 * @param kind what it is
 * @param id its id; absent for the host
 * @param node id of the node
 */
public record WayAttachment(AttachedKind kind, @Nullable String id, String node) {}
