package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Power;
import java.util.List;

/**
 * Mean powers of a DC bus over the cycles of its axes.
 *
 * @param id its name
 * @param axes ids of its axes
 * @param returned what its axes return to it together while they return more than they take
 * @param burned what its braking resistors turn into heat at the nominal mains voltage
 * @param bound whether that is the most it can be, because the cycles of the axes have unrelated periods
 */
public record BusPower(String id, List<String> axes, Power returned, Power burned, boolean bound) {}
