package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Power;

/**
 * Mean powers of a control supply.
 *
 * @param id its name
 * @param input what it takes
 * @param loss what of that it turns into heat itself
 */
public record ControlSupplyPower(String id, Power input, Power loss) {}
