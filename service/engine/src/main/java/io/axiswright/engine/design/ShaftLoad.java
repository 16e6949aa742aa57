package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the radial load that an axis without gears puts on the shaft of its motor.
 *
 * @param distance from the shoulder of the shaft to the line of action; the middle of the usable shaft if absent
 * @param overhungMass mass that hangs on the shaft; none if absent
 * @param pressureAngle pressure angle of pinion and rack; 20° if absent (ISO 53)
 * @param requiredLife hours of running the cycle that nine of ten bearings must last; life is worked out but not judged if
 *     absent
 */
public record ShaftLoad(
        @Bounds(min = 0) @Nullable Length distance,
        @Bounds(min = 0) @Nullable Mass overhungMass,

        @Bounds(min = 0, max = 0.7853981633974483) @Nullable Angle pressureAngle,

        @Bounds(above = 0) @Nullable Time requiredLife) {}
