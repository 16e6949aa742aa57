package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;

/**
 * A DC bus that the rectifiers of some loads feed for others. What it passes on is shared in proportion to the rated
 * currents of the feeding loads, and is part of their circuits' currents.
 *
 * @param id name of the bus group
 * @param voltage what the rectifiers keep it at from nominal mains: sqrt(2) times their supply voltage
 * @param feeders ids of the loads whose rectifiers feed it
 * @param loads ids of the loads it feeds
 * @param power rated power of those, taken from the mains in the end
 * @param passedOn mains current that adds to the rated currents of the feeding loads, all of them together
 * @param thermalPassedOn mains current that adds to their cycle-thermal currents
 */
public record BusFeed(
        String id,
        Voltage voltage,
        List<String> feeders,
        List<String> loads,
        Power power,
        Current passedOn,
        Current thermalPassedOn) {}
