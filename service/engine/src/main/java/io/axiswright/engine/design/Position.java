package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Length;

/**
 * A place on the machine, in one right-handed frame the caller chooses.
 *
 * @param x along the machine
 * @param y across it
 * @param z height
 */
public record Position(Length x, Length y, Length z) {}
