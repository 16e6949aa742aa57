package io.axiswright.engine.harmonic;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import java.util.List;

/**
 * Rectifiers on the same lines with like chokes, worked out as one.
 *
 * @param axes ids of their axes
 * @param lines the lines they are connected to
 * @param power mean power they draw together
 * @param fundamental effective value of the first order of their line current
 * @param current effective value of their line current
 * @param distortion effective value of all higher orders over that of the first (THD)
 * @param powerFactor power over voltage times current
 */
public record RectifierGroup(
        List<String> axes,
        List<String> lines,
        Power power,
        Current fundamental,
        Current current,
        double distortion,
        double powerFactor) {}
