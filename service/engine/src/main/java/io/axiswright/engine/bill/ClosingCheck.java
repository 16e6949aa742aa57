package io.axiswright.engine.bill;

import java.util.List;

/**
 * The proof that nothing is forgotten and nothing is there without a reason, taken from the finished lines.
 *
 * @param demands demands of the design and of the demand rules that count its parts
 * @param demandsMet how many of them stand on a line with their whole quantity
 * @param needs needs of the items on the lines, and demand rules that count them, that hold; counted per demand they go back to
 * @param needsMet how many of them stand on a line with their whole quantity
 * @param lines lines of the bill
 * @param linesDemanded how many of them have demands, every one of which goes back to the request or to a need
 * @param linesBalanced how many of them have a quantity equal to the sum of their demands, whole pieces rounded up; of cable
 *     sold by reels one for which the cut list cuts every piece demanded once and no reel is overfull, and
 *     none of which orders less
 * @param spares items of which the design's rules want spare parts
 * @param sparesMet how many of them have just as many
 * @param gaps what does not close, in words; empty for a bill that closes
 */
public record ClosingCheck(
        int demands,
        int demandsMet,
        int needs,
        int needsMet,
        int lines,
        int linesDemanded,
        int linesBalanced,
        int spares,
        int sparesMet,
        List<String> gaps) {

    /** Whether every demand is met by a line and every line by a demand. */
    public boolean closes() {
        return gaps.isEmpty();
    }
}
