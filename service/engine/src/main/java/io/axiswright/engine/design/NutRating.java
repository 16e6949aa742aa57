package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Load rating of a ball nut with play (ISO 3408-5).
 *
 * @param dynamicLoadRating axial load under which nine of ten nuts last a million turns
 * @param requiredLife hours of running the cycle that nine of ten must last; life is worked out but not judged if absent
 */
public record NutRating(
        @Bounds(above = 0) Force dynamicLoadRating,
        @Bounds(above = 0) @Nullable Time requiredLife) {}
