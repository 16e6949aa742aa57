package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** What turns shaft rotation into the load's motion. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Mechanism permits Screw, Belt, RackAndPinion, RotaryTable, Hoist {}
