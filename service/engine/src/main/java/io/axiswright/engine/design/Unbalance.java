package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;

/**
 * A centre of mass beside the axis it turns about: torque = mass · g · eccentricity · sin(tilt) · cos(angle).
 *
 * @param mass all that turns
 * @param eccentricity distance of its centre of mass from the axis
 * @param tilt tilt of the axis from the vertical; 90° is a level axis
 * @param startAngle where the centre of mass is when the cycle begins; at 0 it is level with the axis and turning in the
 *     positive direction raises it
 */
public record Unbalance(
        @Bounds(min = 0) Mass mass,
        @Bounds(min = 0, max = 100) Length eccentricity,
        @Bounds(min = 0, max = 1.5707963267948966) Angle tilt,

        @Bounds(min = -6.283185307179586, max = 6.283185307179586)
        Angle startAngle) {}
