package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * A load straight on the shaft.
 *
 * @param inertia inertia of the load, without the payload of single moves
 * @param bearingFriction friction torque of its bearing; none if absent
 * @param unbalance centre of mass beside a tilted axis; none if absent
 * @param viscousFriction friction torque of its bearing and seals per speed; none if absent
 */
@JsonTypeName("DIRECT_DRIVE")
public record DirectDrive(
        @Bounds(min = 0) Inertia inertia,
        @Bounds(min = 0) @Nullable Torque bearingFriction,
        @Nullable Unbalance unbalance,
        @Bounds(min = 0) @Nullable RotaryDamping viscousFriction)
        implements Mechanism {}
