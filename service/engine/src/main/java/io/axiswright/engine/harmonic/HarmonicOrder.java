package io.axiswright.engine.harmonic;

import io.axiswright.engine.quantity.Current;

/**
 * One order of harmonics in a line.
 *
 * @param order multiple of the mains frequency
 * @param current effective value
 * @param share that over the demand current
 * @param limit highest share at the point of common coupling
 * @param voltageShare voltage it causes there, over the nominal phase voltage
 */
public record HarmonicOrder(int order, Current current, double share, double limit, double voltageShare) {}
