package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableEnd;
import io.axiswright.engine.quantity.Length;
import java.util.List;

/**
 * A cable that is chosen, on its way.
 *
 * @param asker who asked for it ("axis lift-1")
 * @param item catalogue id of the cable
 * @param outerDiameter its outer diameter
 * @param ends its two ends; empty if it is cut from a reel or they are not stated
 * @param enclosures the enclosures it enters, one for each wall
 * @param pointer JSON Pointer, in the request, to what it follows from
 */
public record CableRun(
        String asker,
        String item,
        Length outerDiameter,
        List<CableEnd> ends,
        List<String> enclosures,
        String pointer) {}
