package io.axiswright.engine.harmonic;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.EquipmentCurrentLimits;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The machine as equipment by IEC 61000-3-12, at its mean power; of each quantity the worst line.
 *
 * @param table limits it is held against: balanced where no third order reaches 5 % of the reference current, with chokes where
 *     every rectifier has 3 % in its lines or 4 % in its link
 * @param referenceCurrent effective value of the current in the heaviest line
 * @param ratio short-circuit ratio at the point of common coupling (R_sce), of three-phase equipment
 * @param neededRatio lowest ratio at which every limit is kept; absent if none suffices
 * @param shares what is limited
 */
public record EquipmentEmission(
        EquipmentCurrentLimits table,
        Current referenceCurrent,
        double ratio,
        @Nullable Double neededRatio,
        List<EmissionShare> shares) {}
