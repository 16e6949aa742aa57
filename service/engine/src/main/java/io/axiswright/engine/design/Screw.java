package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * Ball or lead screw with a travelling nut. A ball screw is known by its efficiency, a sliding thread by its friction.
 *
 * @param lead travel per turn
 * @param diameter diameter of the screw for its inertia
 * @param length length of the screw
 * @param load moved mass, without the payload of single moves
 * @param inclination slope of the positive direction above the horizontal; 90° is straight up
 * @param efficiency efficiency when the motor drives; follows from the thread if absent
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param friction guide friction; none if absent
 * @param thread the sliding thread, in place of an efficiency
 * @param preloadTorque drag torque of the preloaded nut; none if absent
 * @param bearingFriction friction torque of the support bearings; none if absent
 * @param support how the screw is held; critical speed and buckling are not checked if absent
 * @param nut load rating of a ball nut; its life is not checked if absent
 */
@JsonTypeName("SCREW")
public record Screw(
        @Bounds(above = 0, max = 1) Length lead,
        @Bounds(above = 0, max = 1) Length diameter,
        @Bounds(above = 0, max = 20) Length length,
        @Bounds(min = 0) Mass load,

        @Bounds(min = -1.5707963267948966, max = 1.5707963267948966)
        Angle inclination,

        @Bounds(above = 0, max = 1) @Nullable Double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Nullable Friction friction,
        @Nullable ScrewThread thread,
        @Bounds(min = 0) @Nullable Torque preloadTorque,
        @Bounds(min = 0) @Nullable Torque bearingFriction,
        @Nullable ScrewSupport support,
        @Nullable NutRating nut)
        implements Mechanism {

    /** A screw of which only what moves the load is known. */
    public Screw(
            Length lead,
            Length diameter,
            Length length,
            Mass load,
            Angle inclination,
            double efficiency,
            @Nullable Double backDrivingEfficiency,
            @Nullable Friction friction) {
        this(
                lead,
                diameter,
                length,
                load,
                inclination,
                Double.valueOf(efficiency),
                backDrivingEfficiency,
                friction,
                null,
                null,
                null,
                null,
                null);
    }
}
