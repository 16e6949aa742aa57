package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * Press or shrink fit: a hub bored smaller than the shaft.
 *
 * @param engagedLength length of the fit
 * @param interference smallest difference of the diameters by their tolerances, what smoothing of the surfaces, heat and speed take
 *     from it taken off
 * @param largestInterference largest difference by the tolerances, which strains the hub; as {@code interference} if absent
 * @param hubDiameter outside diameter of the hub
 * @param hubModulus modulus of elasticity of the hub
 * @param hubYieldStrength yield strength of the hub; whether it stays elastic is not examined if absent
 * @param shaftModulus modulus of elasticity of the shaft; as the hub's if absent
 * @param shaftBore diameter of a bore in the shaft; a solid shaft if absent
 * @param friction coefficient of friction in the fit
 */
@JsonTypeName("INTERFERENCE")
public record InterferenceFastening(
        @Bounds(above = 0, max = 1) Length engagedLength,
        @Bounds(above = 0, max = 0.01) Length interference,
        @Bounds(above = 0, max = 0.01) @Nullable Length largestInterference,
        @Bounds(above = 0, max = 2) Length hubDiameter,
        @Bounds(above = 0) Pressure hubModulus,
        @Bounds(above = 0) @Nullable Pressure hubYieldStrength,
        @Bounds(above = 0) @Nullable Pressure shaftModulus,
        @Bounds(above = 0, max = 2) @Nullable Length shaftBore,
        @Bounds(above = 0, max = 1) double friction)
        implements Fastening {}
