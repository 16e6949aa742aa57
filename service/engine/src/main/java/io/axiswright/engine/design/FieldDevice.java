package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * A sensor, valve, lamp or signal fed with 24 V through the gateway of an axis.
 *
 * @param id the caller's own name for it, unique among the field devices
 * @param axis id of the axis whose gateway feeds it
 * @param law how its current goes with its voltage
 * @param current what it takes at 24 V
 * @param minimumVoltage lowest voltage at which it works
 * @param switched whether it is on an output and may be off; what is not is always on
 * @param cableResistance loop resistance of its cable from the gateway, hot; 0 if absent
 */
public record FieldDevice(
        String id,
        String axis,
        LoadLaw law,
        @Bounds(above = 0, max = 1000) Current current,
        @Bounds(above = 0, max = 60) Voltage minimumVoltage,
        boolean switched,
        @Bounds(min = 0, max = 1000) @Nullable Resistance cableResistance) {}
