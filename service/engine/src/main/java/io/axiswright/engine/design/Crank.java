package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Crank or eccentric that pushes a slider in line with its shaft. Moves turn the crank. At angle 0 the slider is farthest from
 * the shaft; its positive direction is towards the shaft, the way it goes over the first half turn.
 *
 * @param radius crank radius or eccentricity: half the stroke
 * @param rodLength length of the connecting rod, longer than the radius; a crank in a straight slot (pure sine) if absent
 * @param crankInertia inertia of crank and shaft, with the share of the rod's mass at the crank pin
 * @param load mass of the slider, with the share of the rod's mass at its pin, without the payload of single moves
 * @param inclination slope of the slider's positive direction above the horizontal
 * @param startAngle angle of the crank when the cycle begins
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param friction guide friction of the slider under its weight; none if absent
 */
@JsonTypeName("CRANK")
public record Crank(
        @Bounds(above = 0, max = 10) Length radius,
        @Bounds(above = 0, max = 100) @Nullable Length rodLength,
        @Bounds(min = 0) Inertia crankInertia,
        @Bounds(min = 0) Mass load,

        @Bounds(min = -1.5707963267948966, max = 1.5707963267948966)
        Angle inclination,

        @Bounds(min = -6.283185307179586, max = 6.283185307179586)
        Angle startAngle,

        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Nullable Friction friction)
        implements Mechanism {}
