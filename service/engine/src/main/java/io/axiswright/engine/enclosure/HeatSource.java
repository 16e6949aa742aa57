package io.axiswright.engine.enclosure;

import io.axiswright.engine.quantity.Power;

/**
 * Something that gives off heat in an enclosure.
 *
 * @param name what it is: the id of a control supply, of a gateway or of an axis, or "other"
 * @param power mean power it turns into heat
 */
public record HeatSource(String name, Power power) {}
