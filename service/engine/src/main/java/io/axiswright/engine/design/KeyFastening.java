package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * Parallel key.
 *
 * @param engagedLength bearing length of the key
 * @param yieldStrength yield strength of the weakest of key, shaft and hub
 * @param frictionTorque torque that friction between hub and shaft carries beside the key, of a hub that is clamped or pressed on:
 *     where torque reverses it has to carry all of it; none if absent
 */
@JsonTypeName("KEY")
public record KeyFastening(
        @Bounds(above = 0, max = 1) Length engagedLength,
        @Bounds(above = 0) Pressure yieldStrength,
        @Bounds(above = 0) @Nullable Torque frictionTorque)
        implements Fastening {

    /** A key in a hub that is neither clamped nor pressed on. */
    public KeyFastening(Length engagedLength, Pressure yieldStrength) {
        this(engagedLength, yieldStrength, null);
    }
}
