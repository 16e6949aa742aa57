package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** What encloses the cables of a route. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Containment permits Conduit, StandardConduit, Trunking {}
