package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the output shaft of a drive unit stands across its length, and the ball bearing at its end.
 *
 * @param permittedRadialLoad largest radial force at the middle of the usable shaft; not checked if absent
 * @param dynamicLoadRating basic dynamic radial load rating (ISO 281) of the bearing at the shaft end; life is not worked out
 *     if absent
 * @param bearingSpacing distance of the two bearings; life is not worked out if absent
 * @param bearingDistance distance from the bearing at the shaft end to the shoulder, where the usable shaft begins; life is
 *     not worked out if absent
 */
public record ShaftBearing(
        @Bounds(above = 0) @Nullable Force permittedRadialLoad,
        @Bounds(above = 0) @Nullable Force dynamicLoadRating,
        @Bounds(above = 0) @Nullable Length bearingSpacing,
        @Bounds(min = 0) @Nullable Length bearingDistance) {}
