package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import org.jspecify.annotations.Nullable;

/**
 * The point of common coupling: where others are supplied from the same network, and where limits of distortion hold.
 *
 * @param shortCircuitCurrent current of a short circuit there, at the voltage of the machine's mains; that of the supply terminals
 *     if absent
 * @param demandCurrent greatest mean current of everything supplied through it, this machine included, at the voltage of the
 *     machine's mains; that of this machine alone if absent, which is the strictest
 * @param publicLowVoltage whether the machine is connected to a public low-voltage network, so that its currents are held against
 *     IEC 61000-3-12 as well; no if absent
 */
public record CommonCoupling(
        @Bounds(above = 0, max = 1e6) @Nullable Current shortCircuitCurrent,
        @Bounds(above = 0, max = 1e6) @Nullable Current demandCurrent,
        @Nullable Boolean publicLowVoltage) {}
