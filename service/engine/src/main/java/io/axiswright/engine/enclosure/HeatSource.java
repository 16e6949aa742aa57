package io.axiswright.engine.enclosure;

import io.axiswright.engine.quantity.Power;

/**
 * Something that gives off heat in an enclosure.
 *
 * @param name what it is: the id of a control supply, of a gateway, of an axis or of a transformer, or "other"
 * @param power mean power it turns into heat
 */
public record HeatSource(String name, Power power) {}
