package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * Which drive unit an axis gets, or what to choose among.
 *
 * @param item the drive unit's catalogue id; chosen by the service if absent
 * @param feed only units with this feed; any if absent
 * @param forcedVentilationAllowed whether a ventilation kit may be used
 * @param holdingBrake whether the axis needs a holding brake
 * @param keepAlive whether its position must survive a loss of mains
 * @param gear whether a gear unit may be chosen with it; only the stated gears if absent
 * @param gearUnit catalogue id of the gear unit between it and the stated gears; none, or a chosen one, if absent
 * @param brakeMargin the torque of its holding brake over the torque that it must hold; 1.5 if absent, which is common practice
 *     and not from a standard
 * @param reserves whether to work out how fast and how loaded the axis could run at most, which takes as long as some 400
 *     sizings of the axis; not if absent. Done while the cycles of all axes that ask have up to 4000 pieces of motion together
 */
public record DriveSelection(
        @Nullable String item,
        @Nullable Feed feed,
        boolean forcedVentilationAllowed,
        boolean holdingBrake,
        boolean keepAlive,
        @Nullable GearChoice gear,
        @Nullable String gearUnit,
        @Bounds(min = 1, max = 10) @Nullable Double brakeMargin,
        @Nullable Boolean reserves) {

    private static final double USUAL_BRAKE_MARGIN = 1.5;

    /** Torque of its holding brake over the torque that it must hold. */
    public double holdingMargin() {
        return brakeMargin == null ? USUAL_BRAKE_MARGIN : brakeMargin;
    }

    /** Whether reserves are asked for. */
    public boolean asksReserves() {
        return Boolean.TRUE.equals(reserves);
    }

    /** The same without a holding brake. */
    public DriveSelection withoutBrake() {
        return new DriveSelection(
                item, feed, forcedVentilationAllowed, false, keepAlive, gear, gearUnit, brakeMargin, reserves);
    }
}
