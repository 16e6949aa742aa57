package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A thread that slides (Shigley, Mechanical Engineering Design, 9th ed., eq. 8-1 to 8-6).
 *
 * @param friction friction coefficient between screw and nut
 * @param pitchDiameter mean diameter of the thread
 * @param flankAngle angle of the flank against the plane across the axis: 0° square, 15° metric trapezoidal, 14.5° Acme
 * @param collar sliding thrust bearing; none if absent
 */
public record ScrewThread(
        @Bounds(min = 0, max = 2) double friction,
        @Bounds(above = 0, max = 1) Length pitchDiameter,

        @Bounds(min = 0, max = 1) Angle flankAngle,

        @Nullable Collar collar) {}
