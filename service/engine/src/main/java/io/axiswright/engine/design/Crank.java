package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Crank or eccentric that pushes a slider. Moves turn the crank. At angle 0 the crank points along the slider's line, away
 * from it, and without an offset the slider is farthest from the shaft; its positive direction is towards the shaft, the way
 * it goes over the first half turn.
 *
 * @param radius crank radius or eccentricity: half the stroke
 * @param rodLength length of the connecting rod, longer than the radius; a crank in a straight slot (pure sine) if absent
 * @param crankInertia inertia of crank and shaft; with the share of the rod's mass at the crank pin where {@code rodMass} is absent
 * @param load mass of the slider, without the payload of single moves; with the share of the rod's mass at its pin where
 *     {@code rodMass} is absent
 * @param inclination slope of the slider's positive direction above the horizontal
 * @param startAngle angle of the crank when the cycle begins
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param friction guide friction of the slider under its weight, not under the side thrust of the rod, which the
 *     answer states beside it; none if absent
 * @param offset how far the shaft stands off the slider's line; positive if the crank pin is on the line's side of the shaft at
 *     a quarter turn. The rod must be longer than radius and offset together; in line if absent
 * @param rodMass mass of the connecting rod, which counts as two masses at its pins that keep its centre of gravity: what that
 *     overstates of the rod's own inertia is left out, and its weight at the crank pin is taken to be balanced; 0 if absent
 * @param rodCentre where the rod's centre of gravity is on the way from the crank pin (0) to the slider's (1); 0.5, an even rod,
 *     if absent
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
        @Nullable Friction friction,
        @Bounds(min = -10, max = 10) @Nullable Length offset,
        @Bounds(min = 0) @Nullable Mass rodMass,
        @Bounds(min = 0, max = 1) @Nullable Double rodCentre)
        implements Mechanism {

    private static final double EVEN = 0.5;

    /** The share of the connecting rod's mass that goes with the slider, kg. */
    public double rodMassAtSlider() {
        return rodMass == null ? 0 : rodMass.si() * (rodCentre == null ? EVEN : rodCentre);
    }

    /** The share that goes with the crank pin, kg. */
    public double rodMassAtCrank() {
        return rodMass == null ? 0 : rodMass.si() - rodMassAtSlider();
    }
}
