package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Current;
import org.jspecify.annotations.Nullable;

/**
 * What a chain takes in one mode.
 *
 * @param mode the mode
 * @param current largest current in that mode, from the lowest or the highest output voltage; absent if the voltage collapses
 */
public record ModeCurrent(ControlMode mode, @Nullable Current current) {}
