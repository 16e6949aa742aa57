package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * One end of a cable assembly.
 *
 * @param kind how it comes
 * @param width width of its widest part, which must pass every gland it is drawn through; for a MOULDED end only
 * @param fieldParts id of the item that makes a connector on the machine: of a FIELD_MADE end, or of a MOULDED one that is cut
 *     off because it passes no gland; none is offered if absent
 * @param fieldTool id of the tool that takes; absent if the catalogue has none
 * @param fieldLabour work that takes; absent if unknown
 */
public record CableEnd(
        CableEndKind kind,
        @Bounds(above = 0) @Nullable Length width,
        @Nullable String fieldParts,
        @Nullable String fieldTool,
        @Bounds(min = 0) @Nullable Time fieldLabour) {}
