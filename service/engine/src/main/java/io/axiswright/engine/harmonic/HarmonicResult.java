package io.axiswright.engine.harmonic;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Current;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Harmonic currents of the machine at mean power, and their distortion at the point of common coupling against the limits of IEEE
 * 519. Resistances and the distortion others cause are left out.
 *
 * @param shortCircuitCurrent current of a short circuit at the point of common coupling
 * @param demandCurrent demand current there; absent without any rectifier
 * @param ratio short-circuit over demand current; absent without any rectifier
 * @param demandLimit highest total demand distortion at that ratio; absent without any rectifier
 * @param voltageLimit highest voltage distortion
 * @param groups the rectifiers
 * @param lines distortion by line; empty without any rectifier, and where the input of some drive unit is not known
 * @param equipment the machine as equipment on a public low-voltage network; absent where that is not asked for or not judged
 * @param findings remarks
 * @param derivations how the numbers came about
 */
public record HarmonicResult(
        Current shortCircuitCurrent,
        @Nullable Current demandCurrent,
        @Nullable Double ratio,
        @Nullable Double demandLimit,
        double voltageLimit,
        List<RectifierGroup> groups,
        List<LineDistortion> lines,
        @Nullable EquipmentEmission equipment,
        List<Finding> findings,
        List<Derivation> derivations) {}
