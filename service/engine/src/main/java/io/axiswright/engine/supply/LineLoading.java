package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Current;

/**
 * What one line of the supply carries.
 *
 * @param line "L1" …
 * @param current sum of the rated currents on it
 * @param thermalCurrent sum of the cycle-thermal currents on it
 */
public record LineLoading(String line, Current current, Current thermalCurrent) {}
