package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The cable from a gateway to a drive unit.
 *
 * @param axis id of the axis
 * @param cable id of the cable assembly
 * @param routeLength length the route asks for
 * @param cableLength length of the cable assembly, of two joined together
 * @param extension what leads on from that cable where no single one reaches; absent if it does
 */
public record SpurLink(
        String axis,
        String cable,
        Length routeLength,
        Length cableLength,
        @Nullable CableExtension extension) {}
