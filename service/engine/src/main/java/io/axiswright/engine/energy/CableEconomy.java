package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.util.List;

/**
 * What the cable of a circuit costs over the life of the machine, and with which size that is least (IEC 60287-3-2). Advice: the
 * selected cable stays. A thicker one needs terminals, glands and conduit for it, and lets more current flow in a fault.
 *
 * @param circuit id of the circuit; "feeder" for the feeder
 * @param length length of cable it needs
 * @param selected catalogue id of the cable selected
 * @param cheapest catalogue id of the cable that costs least over the life; never thinner than the code asks for
 * @param saving what it costs less over the life than the one selected; 0 if it is that one
 * @param options every size of the catalogue that the code allows and that has a price, thinnest first
 */
public record CableEconomy(
        String circuit, Length length, String selected, String cheapest, Money saving, List<CableLifeCost> options) {}
