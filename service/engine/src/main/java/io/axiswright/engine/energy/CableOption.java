package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;

/**
 * A cable that would serve a circuit by the code.
 *
 * @param item its catalogue id
 * @param size size of its conductors
 * @param price price of one metre
 * @param loss mean heat of its conductors in the first year
 */
public record CableOption(String item, ConductorSize size, Money price, Power loss) {}
