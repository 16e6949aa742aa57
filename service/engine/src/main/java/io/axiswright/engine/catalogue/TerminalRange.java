package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.ConductorSize;
import org.jspecify.annotations.Nullable;

/**
 * The conductor sizes that terminals take; of a circuit, those at the end that takes fewer.
 *
 * @param smallest thinnest conductor they hold; any if absent
 * @param largest thickest conductor they take; any if absent
 */
public record TerminalRange(
        @Nullable ConductorSize smallest, @Nullable ConductorSize largest) {

    /** Whether the terminals take a conductor of this cross-section in m²; nominal sizes of both systems compare. */
    public boolean holds(double area) {
        return smallest == null || smallest.area().si() <= area;
    }

    /** Whether a conductor of this cross-section in m² goes into them. */
    public boolean admits(double area) {
        return largest == null || area <= largest.area().si();
    }
}
