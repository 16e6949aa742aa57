package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Time;

/**
 * How a braking resistor is used, at its hardest.
 *
 * @param on longest time it takes current without pause
 * @param off shortest pause after it
 */
public record ResistorPulse(
        @Bounds(above = 0, max = 3600) Time on,
        @Bounds(min = 0, max = 86400) Time off) {}
