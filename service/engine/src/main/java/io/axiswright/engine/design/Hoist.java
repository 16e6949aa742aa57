package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * Drum and rope; positive travel raises the load.
 *
 * @param drumDiameter effective diameter of the drum
 * @param drumInertia inertia of the drum
 * @param load moved mass, without the payload of single moves
 * @param counterweight mass hanging on the other side; none if absent
 * @param reeving parts of rope that carry the load
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param rope the rope, where it weighs something; none if absent
 * @param bearingFriction friction torque of drum, sheaves and guides, as the drum feels it; none if absent
 * @param viscousFriction their friction torque per speed of the drum; none if absent
 */
@JsonTypeName("HOIST")
public record Hoist(
        @Bounds(above = 0, max = 5) Length drumDiameter,
        @Bounds(min = 0) Inertia drumInertia,
        @Bounds(min = 0) Mass load,
        @Bounds(min = 0) @Nullable Mass counterweight,
        @Bounds(min = 1, max = 16) int reeving,
        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Nullable HoistRope rope,
        @Bounds(min = 0) @Nullable Torque bearingFriction,
        @Bounds(min = 0) @Nullable RotaryDamping viscousFriction)
        implements Mechanism {

    /** A hoist whose rope weighs nothing. */
    public Hoist(
            Length drumDiameter,
            Inertia drumInertia,
            Mass load,
            @Nullable Mass counterweight,
            int reeving,
            double efficiency,
            @Nullable Double backDrivingEfficiency) {
        this(drumDiameter, drumInertia, load, counterweight, reeving, efficiency, backDrivingEfficiency, null);
    }

    /** A hoist without friction beside its efficiency. */
    public Hoist(
            Length drumDiameter,
            Inertia drumInertia,
            Mass load,
            @Nullable Mass counterweight,
            int reeving,
            double efficiency,
            @Nullable Double backDrivingEfficiency,
            @Nullable HoistRope rope) {
        this(
                drumDiameter,
                drumInertia,
                load,
                counterweight,
                reeving,
                efficiency,
                backDrivingEfficiency,
                rope,
                null,
                null);
    }
}
