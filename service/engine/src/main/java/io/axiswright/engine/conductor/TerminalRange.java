package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.ConductorSize;
import org.jspecify.annotations.Nullable;

/**
 * The conductor sizes that the terminals of a circuit take, at the end that takes fewer.
 *
 * @param smallest thinnest conductor they hold; any if absent
 * @param largest thickest conductor they take; any if absent
 */
public record TerminalRange(
        @Nullable ConductorSize smallest, @Nullable ConductorSize largest) {

    /** Whether the terminals take a conductor of this cross-section in m²; nominal sizes of both systems compare. */
    boolean holds(double area) {
        return smallest == null || smallest.area().si() <= area;
    }

    /** Whether a conductor of this cross-section in m² goes into them. */
    boolean admits(double area) {
        return largest == null || area <= largest.area().si();
    }
}
