package io.axiswright.engine.duty;

import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A drive unit tried on an axis, with what would be bought beside it.
 *
 * @param driveUnit catalogue id of the drive unit
 * @param gearUnit catalogue id of its gear unit; absent if it turns the axis with the stated gears only
 * @param ventilationKit catalogue id of its ventilation kit; absent if it runs without
 * @param holdingBrake catalogue id of its holding brake; absent if none is asked for or none fits
 * @param price price of all of them; absent if any has none
 * @param feasible whether it holds every limit
 * @param limit the limit that leaves it least margin if it holds, the first it breaks if not
 * @param value what is asked of that limit
 * @param allowed what it allows
 * @param use value over allowed; stated up to 1000
 * @param shortfall how many times as much it would have to have of what it lacks most, by which those rejected are ranked: of
 *     the limits of its gear unit and its brake, of speed, or of both speed and torque of its curves at once; up to 1000, and
 *     1000 more where it cannot be fed. Absent if it holds
 * @param inertiaRatio reflected inertia over its motor inertia; those within the ratio their control is tuned for are
 *     ranked before the others
 */
public record Candidate(
        String driveUnit,
        @Nullable String gearUnit,
        @Nullable String ventilationKit,
        @Nullable String holdingBrake,
        @Nullable Money price,
        boolean feasible,
        DutyLimit limit,
        Quantity value,
        Quantity allowed,
        double use,
        @Nullable Double shortfall,
        double inertiaRatio) {}
