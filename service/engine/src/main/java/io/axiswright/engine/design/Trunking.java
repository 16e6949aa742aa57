package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * Trunking or wireway with a lid.
 *
 * @param width inner width
 * @param height inner height
 * @param metal whether it is of metal; not if absent
 */
@JsonTypeName("TRUNKING")
public record Trunking(
        @Bounds(above = 0, max = 2) Length width,
        @Bounds(above = 0, max = 2) Length height,
        boolean metal) implements Containment {}
