package io.axiswright.engine.conductor;

import io.axiswright.engine.standard.Source;

/**
 * Impedance of a hot conductor per length.
 *
 * @param resistance in ohm/m
 * @param reactance in ohm/m
 * @param source where it comes from
 */
record Impedance(double resistance, double reactance, Source source) {

    /** That of so many conductors in parallel. */
    Impedance inParallel(int conductors) {
        return conductors == 1 ? this : new Impedance(resistance / conductors, reactance / conductors, source);
    }
}
