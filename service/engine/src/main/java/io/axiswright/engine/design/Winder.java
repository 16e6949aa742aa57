package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * A roll of material wound by positive travel and unwound by negative; its radius and inertia change on the way.
 *
 * @param motion which motion the cycle states
 * @param coreDiameter diameter of the core
 * @param coreInertia inertia of core and shaft
 * @param fullDiameter diameter of the full roll
 * @param material mass of the material on the full roll
 * @param thickness thickness of the material as wound
 * @param startDiameter diameter of the roll when the cycle begins
 * @param tension pull of the material against winding; the process effort of single moves adds to it
 * @param bearingFriction friction torque of its bearings; none if absent
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the material drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param viscousFriction friction torque of its bearings per speed of the roll; none if absent
 */
@JsonTypeName("WINDER")
public record Winder(
        WinderMotion motion,
        @Bounds(above = 0, max = 5) Length coreDiameter,
        @Bounds(min = 0) Inertia coreInertia,
        @Bounds(above = 0, max = 10) Length fullDiameter,
        @Bounds(min = 0) Mass material,
        @Bounds(above = 0, max = 0.5) Length thickness,
        @Bounds(above = 0, max = 10) Length startDiameter,
        @Bounds(min = 0) Force tension,
        @Bounds(min = 0) @Nullable Torque bearingFriction,
        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Bounds(min = 0) @Nullable RotaryDamping viscousFriction)
        implements Mechanism {

    /** A roll without viscous friction. */
    public Winder(
            WinderMotion motion,
            Length coreDiameter,
            Inertia coreInertia,
            Length fullDiameter,
            Mass material,
            Length thickness,
            Length startDiameter,
            Force tension,
            @Nullable Torque bearingFriction,
            double efficiency,
            @Nullable Double backDrivingEfficiency) {
        this(
                motion,
                coreDiameter,
                coreInertia,
                fullDiameter,
                material,
                thickness,
                startDiameter,
                tension,
                bearingFriction,
                efficiency,
                backDrivingEfficiency,
                null);
    }
}
