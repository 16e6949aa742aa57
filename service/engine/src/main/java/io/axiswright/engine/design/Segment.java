package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** A piece of a cycle. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Segment permits Move, Dwell {

    /** How long it lasts. */
    io.axiswright.engine.quantity.Time duration();
}
