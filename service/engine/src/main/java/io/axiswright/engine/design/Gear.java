package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import org.jspecify.annotations.Nullable;

/**
 * A gearbox between motor and mechanism.
 *
 * @param ratio motor turns per output turn
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency (not below 0) if absent
 * @param inertia its inertia at the input shaft
 */
public record Gear(
        @Bounds(above = 0, max = 10000) double ratio,
        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Bounds(min = 0) Inertia inertia) {}
