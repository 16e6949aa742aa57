package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Energy;
import java.util.List;

/**
 * The energy of a DC bus in a year.
 *
 * @param id its name
 * @param axes ids of its axes
 * @param supplied what its rectifiers take from the mains for it; what the load adds to the losses of the electronics comes
 *     on top
 * @param returned what its axes return to it together while they return more than they take
 * @param burned what its braking resistors turn into heat
 * @param reused what of the returned energy the capacitors keep for the next motion
 * @param bound whether the burned energy is the most it can be, because the cycles of its axes have unrelated periods
 */
public record BusEnergy(
        String id,
        List<String> axes,
        YearlyUse supplied,
        Energy returned,
        YearlyUse burned,
        Energy reused,
        boolean bound) {}
