package io.axiswright.engine.design;

/**
 * A point where cable ways meet or cables join them.
 *
 * @param id the caller's own name for it, unique among the nodes
 * @param position where it is
 */
public record WayNode(String id, Position position) {}
