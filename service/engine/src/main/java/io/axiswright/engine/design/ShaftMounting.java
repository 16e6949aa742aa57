package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * How the drive unit is held and joined to the machine.
 *
 * @param kind feet or face
 * @param shaftHeight height of the driven shaft above the seat of the feet; needed for FOOT
 * @param fastening how torque passes to the hub
 * @param safetyFactor factor the fastening must keep against the greatest torque it meets: the peak of the cycle, the hardest
 *     controlled stop on demand, and the torque of the holding brake, which may close while the shaft turns
 */
public record ShaftMounting(
        MountingKind kind,
        @Bounds(above = 0, max = 2) @Nullable Length shaftHeight,
        Fastening fastening,
        @Bounds(min = 1, max = 10) double safetyFactor) {}
