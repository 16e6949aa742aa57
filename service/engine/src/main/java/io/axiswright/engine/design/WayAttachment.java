package io.axiswright.engine.design;

import org.jspecify.annotations.Nullable;

/**
 * Which node of the cable ways the drive unit of an axis, the gateways of a place, or, where neither is named, the host is
 * joined to. The same holds for whatever else stands in the same position.
 *
 * @param axis id of the axis, there or reserved
 * @param place id of the place
 * @param node id of the node
 */
public record WayAttachment(@Nullable String axis, @Nullable String place, String node) {}
