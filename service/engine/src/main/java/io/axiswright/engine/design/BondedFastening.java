package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;

/**
 * Cylindrical bonded joint.
 *
 * @param engagedLength bonded length
 * @param shearStrength static shear strength of the adhesive (ISO 10123)
 * @param reduction product of the reductions for material, gap, temperature and alternating load
 */
@JsonTypeName("BONDED")
public record BondedFastening(
        @Bounds(above = 0, max = 1) Length engagedLength,
        @Bounds(above = 0) Pressure shearStrength,
        @Bounds(above = 0, max = 1) double reduction)
        implements Fastening {}
