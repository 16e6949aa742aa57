package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import java.util.List;

/**
 * How the pieces of one order of cable are cut from as few reels as possible, those of its required and conditional line together. Each demand is one piece; a piece and its allowance
 * count in whole centimetres, rounded up.
 *
 * @param line id of the bill's line, the first of the order, which has what is on the reels beyond what other lines need
 * @param item catalogue id of the cable
 * @param reelLength length of cable on each reel
 * @param cutAllowance what each piece takes beyond its length
 * @param reels the reels, with what is cut from each
 * @param fewestReels proven: no fewer reels will do
 * @param proven whether so many reels as are listed are the fewest
 * @param waste what the reels have beyond the pieces: what is left on them and the allowances
 * @param longerThanReel pieces no reel is long enough for, on none of the reels
 */
public record CutList(
        String line,
        String item,
        Length reelLength,
        @Bounds(min = 0) Length cutAllowance,
        List<CutReel> reels,
        @Bounds(min = 0) int fewestReels,
        boolean proven,
        @Bounds(min = 0) Length waste,
        List<CutPiece> longerThanReel) {}
