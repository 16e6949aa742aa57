package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Length;

/**
 * A standard frame of a foot-mounted machine.
 *
 * @param name its designation
 * @param shaftHeight height of the shaft above the feet
 * @param shaftDiameter diameter of the shaft end
 */
public record Frame(String name, Length shaftHeight, Length shaftDiameter) {}
