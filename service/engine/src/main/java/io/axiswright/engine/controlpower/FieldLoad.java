package io.axiswright.engine.controlpower;

import io.axiswright.engine.design.FieldDevice;
import io.axiswright.engine.quantity.Bounds;

/**
 * A field device at the gateway that feeds it.
 *
 * @param device the device
 * @param index its place in the design's list of field devices
 */
public record FieldLoad(
        FieldDevice device, @Bounds(min = 0, max = 1023) int index) {}
