package io.axiswright.engine.comparison;

import java.util.List;

/**
 * What is known of the changes that bring a consequence only together.
 *
 * @param changes places of changes that bring it together; empty if none are known
 * @param minimal whether each is known to be needed: without it the second result is another one, or the others were tried without it and
 *     did not bring it
 * @param examined whether all that was asked was studied; if not, the budget ended first
 */
record Joint(List<Integer> changes, boolean minimal, boolean examined) {

    /** Of a consequence of which nothing joint was to be asked, or that nothing was found to bring. */
    static final Joint NONE = new Joint(List.of(), false, true);
}
