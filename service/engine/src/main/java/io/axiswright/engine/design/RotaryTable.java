package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * A table turning about a vertical axis, or about any other with its centre of mass apart from it.
 *
 * @param inertia inertia of table and fixtures, without the payload of single moves
 * @param bearingFriction friction torque of its bearing
 * @param efficiency efficiency of its drive when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param unbalance centre of mass beside a tilted axis; none if absent
 * @param viscousFriction friction torque of its bearing and seals per speed of the table; none if absent
 */
@JsonTypeName("ROTARY_TABLE")
public record RotaryTable(
        @Bounds(min = 0) Inertia inertia,
        @Bounds(min = 0) Torque bearingFriction,
        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Nullable Unbalance unbalance,
        @Bounds(min = 0) @Nullable RotaryDamping viscousFriction)
        implements Mechanism {

    /** A balanced table without viscous friction. */
    public RotaryTable(
            Inertia inertia, Torque bearingFriction, double efficiency, @Nullable Double backDrivingEfficiency) {
        this(inertia, bearingFriction, efficiency, backDrivingEfficiency, null, null);
    }
}
