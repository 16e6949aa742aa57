package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;

/**
 * A conduit of North American trade size.
 *
 * @param type its article of NFPA 70
 * @param metricDesignator its size: 16 for 1/2, 21 for 3/4, 27 for 1, 35, 41, 53 …
 */
@JsonTypeName("STANDARD_CONDUIT")
public record StandardConduit(
        ConduitType type, @Bounds(min = 12, max = 155) int metricDesignator) implements Containment {}
