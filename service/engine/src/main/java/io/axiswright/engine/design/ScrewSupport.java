package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * How a screw is held, for its critical speed and its buckling load.
 *
 * @param ends how its ends are held
 * @param rootDiameter diameter at the root of the thread
 * @param unsupportedLength longest length without support over the stroke; the screw's length if absent
 * @param speedShare share of the critical speed it may turn at; 0.8 if absent (common practice)
 * @param bucklingFactor how many times the largest axial force the buckling load must be; 2 if absent (common practice)
 * @param yieldStrength yield strength of the screw's core, by which a short screw buckles sooner than by Euler's formula; Euler's
 *     alone, which overrates short screws, if absent
 */
public record ScrewSupport(
        EndFixity ends,
        @Bounds(above = 0, max = 1) Length rootDiameter,
        @Bounds(above = 0, max = 20) @Nullable Length unsupportedLength,
        @Bounds(above = 0, max = 1) @Nullable Double speedShare,
        @Bounds(min = 1, max = 20) @Nullable Double bucklingFactor,
        @Bounds(above = 0) @Nullable Pressure yieldStrength) {}
