package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Bounds;

/**
 * A buffer chosen to feed on after mains is lost.
 *
 * @param item its catalogue id
 * @param count how many
 */
public record ChosenBuffer(
        String item, @Bounds(min = 1, max = 64) int count) {}
