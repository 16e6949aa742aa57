package io.axiswright.engine.catalogue;

/**
 * Two items that must not stand on one machine.
 *
 * @param item id of the one
 * @param other id of the other
 * @param reason why, in words a buyer understands
 */
public record Exclusion(String item, String other, String reason) {}
