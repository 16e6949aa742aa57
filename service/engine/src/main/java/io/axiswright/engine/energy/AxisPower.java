package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Power;
import org.jspecify.annotations.Nullable;

/**
 * Mean powers of an axis over its cycle.
 *
 * @param axis id of the axis
 * @param motored what its motor gives to the shaft
 * @param returned what the shaft gives back, as a magnitude
 * @param copperLoss loss in the winding
 * @param standbyLoss loss of the power electronics at any load
 * @param loadLoss what the load adds to it; not known if absent
 * @param ventilation input of its separately driven fan; 0 without
 */
public record AxisPower(
        String axis,
        Power motored,
        Power returned,
        Power copperLoss,
        Power standbyLoss,
        @Nullable Power loadLoss,
        Power ventilation) {

    /** What the axis takes from its DC bus less what it gives back to it, W. */
    public double fromBus() {
        return motored.si() - returned.si() + copperLoss.si() + standbyLoss.si();
    }

    /** What the load adds to the loss of the electronics, W; 0 where it is not known. */
    public double byLoad() {
        return loadLoss == null ? 0 : loadLoss.si();
    }

    /** What it takes altogether less what it gives back, W. */
    double net() {
        return fromBus() + byLoad() + ventilation.si();
    }
}
