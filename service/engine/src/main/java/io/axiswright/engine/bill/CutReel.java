package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import java.util.List;

/**
 * What is cut from one reel.
 *
 * @param pieces its pieces, longest first
 * @param left what is left on it, cut allowances taken off
 */
public record CutReel(
        List<CutPiece> pieces, @Bounds(min = 0) Length left) {}
