package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * An endless belt that carries goods. Belt and goods move and rub, the goods alone weigh on a slope: of the belt as much goes
 * down as comes up.
 *
 * @param drumDiameter diameter of the driven drum at the belt
 * @param drumInertia inertia of the driven drum
 * @param tailDrum the drum at the other end; none if absent
 * @param idler one of the idlers; none if absent
 * @param idlers how many idlers there are
 * @param beltMass mass of the whole belt
 * @param load mass of the goods on it, without the payload of single moves
 * @param inclination slope of the positive direction above the horizontal
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param friction friction of belt and goods on bed or idlers; none if absent
 */
@JsonTypeName("CONVEYOR")
public record Conveyor(
        @Bounds(above = 0, max = 5) Length drumDiameter,
        @Bounds(min = 0) Inertia drumInertia,
        @Nullable Roller tailDrum,
        @Nullable Roller idler,
        @Bounds(min = 0, max = 10000) int idlers,
        @Bounds(min = 0) Mass beltMass,
        @Bounds(min = 0) Mass load,

        @Bounds(min = -1.5707963267948966, max = 1.5707963267948966)
        Angle inclination,

        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Nullable Friction friction)
        implements Mechanism {}
