package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * A conduit or hose of any make.
 *
 * @param innerDiameter its least inner diameter
 */
@JsonTypeName("CONDUIT")
public record Conduit(@Bounds(above = 0, max = 1) Length innerDiameter) implements Containment {}
