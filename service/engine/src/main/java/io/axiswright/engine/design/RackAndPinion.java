package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Pinion running on a rack.
 *
 * @param pitchDiameter pitch diameter of the pinion
 * @param pinionInertia inertia of the pinion
 * @param load moved mass, without the payload of single moves
 * @param inclination slope of the positive direction above the horizontal; 90° is straight up
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param friction guide friction; none if absent
 */
@JsonTypeName("RACK_AND_PINION")
public record RackAndPinion(
        @Bounds(above = 0, max = 2) Length pitchDiameter,
        @Bounds(min = 0) Inertia pinionInertia,
        @Bounds(min = 0) Mass load,

        @Bounds(min = -1.5707963267948966, max = 1.5707963267948966)
        Angle inclination,

        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Nullable Friction friction)
        implements Mechanism {}
