package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;

/**
 * What a cable costs over the life of the machine.
 *
 * @param item its catalogue id
 * @param size size of its conductors
 * @param purchase its price, by the metre
 * @param losses present value of the energy lost in it over the life
 * @param total both together
 */
public record CableLifeCost(String item, ConductorSize size, Money purchase, Money losses, Money total) {}
