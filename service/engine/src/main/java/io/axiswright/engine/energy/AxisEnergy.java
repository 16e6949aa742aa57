package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Energy;
import org.jspecify.annotations.Nullable;

/**
 * The energy of an axis in a year.
 *
 * @param axis id of the axis
 * @param motored what its motor gives to the shaft
 * @param returned what the shaft gives back, as a magnitude
 * @param copperLoss loss in the winding
 * @param standbyLoss loss of the power electronics at any load
 * @param loadLoss what the load adds to it; absent where the catalogue does not state {@code ratedLoss}
 * @param ventilation input of its separately driven fan; 0 without
 * @param net what it takes altogether less what it gives back; what of that is burned is told by its bus
 */
public record AxisEnergy(
        String axis,
        Energy motored,
        Energy returned,
        Energy copperLoss,
        Energy standbyLoss,
        @Nullable Energy loadLoss,
        Energy ventilation,
        YearlyUse net) {}
