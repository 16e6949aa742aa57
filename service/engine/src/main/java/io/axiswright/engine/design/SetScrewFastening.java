package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;

/**
 * Set screws that press on the shaft. They hold by friction and the dimple they leave, and creep where torque reverses.
 *
 * @param holdingForce axial holding force of all of them together at their seating torque, by their maker or a test; two at an acute
 *     angle hold less than twice what one holds
 */
@JsonTypeName("SET_SCREW")
public record SetScrewFastening(@Bounds(above = 0) Force holdingForce) implements Fastening {}
