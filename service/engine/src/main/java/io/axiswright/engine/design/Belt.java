package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Toothed belt over pulleys.
 *
 * @param pulleyDiameter pitch diameter of the driven pulley
 * @param pulleyInertia inertia of the driven pulley, and of all others brought to it that are not stated apart
 * @param load moved mass, without the payload of single moves
 * @param inclination slope of the positive direction above the horizontal; 90° is straight up
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param friction guide friction; none if absent
 * @param beltMass mass of the whole belt; none if absent
 * @param secondPulley the pulley at the other end; none beyond {@code pulleyInertia} if absent
 * @param tension what is known of its strands; not checked if absent
 */
@JsonTypeName("BELT")
public record Belt(
        @Bounds(above = 0, max = 2) Length pulleyDiameter,
        @Bounds(min = 0) Inertia pulleyInertia,
        @Bounds(min = 0) Mass load,

        @Bounds(min = -1.5707963267948966, max = 1.5707963267948966)
        Angle inclination,

        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Nullable Friction friction,
        @Bounds(min = 0) @Nullable Mass beltMass,
        @Nullable Roller secondPulley,
        @Nullable BeltTension tension)
        implements Mechanism {

    /** A belt of which only what moves the load is known. */
    public Belt(
            Length pulleyDiameter,
            Inertia pulleyInertia,
            Mass load,
            Angle inclination,
            double efficiency,
            @Nullable Double backDrivingEfficiency,
            @Nullable Friction friction) {
        this(
                pulleyDiameter,
                pulleyInertia,
                load,
                inclination,
                efficiency,
                backDrivingEfficiency,
                friction,
                null,
                null,
                null);
    }
}
