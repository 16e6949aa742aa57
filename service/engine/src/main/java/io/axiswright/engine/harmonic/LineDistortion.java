package io.axiswright.engine.harmonic;

import io.axiswright.engine.quantity.Current;
import java.util.List;

/**
 * Distortion in a line at the point of common coupling.
 *
 * @param line its name
 * @param fundamental effective value of the first order of the machine's current, everything but rectifiers as sines
 * @param demandDistortion effective value of all higher orders over the demand current (TDD)
 * @param voltageDistortion effective value of the voltages they cause over the nominal phase voltage
 * @param orders the odd orders from 3 to 49
 */
public record LineDistortion(
        String line,
        Current fundamental,
        double demandDistortion,
        double voltageDistortion,
        List<HarmonicOrder> orders) {}
