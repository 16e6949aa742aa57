package io.axiswright.engine.design;

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
 * @param reserves whether to work out how fast and how loaded the axis could run at most; not if absent
 */
public record DriveSelection(
        @Nullable String item,
        @Nullable Feed feed,
        boolean forcedVentilationAllowed,
        boolean holdingBrake,
        boolean keepAlive,
        @Nullable GearChoice gear,
        @Nullable Boolean reserves) {

    /** Without a choice of gear units, and without asking for reserves. */
    public DriveSelection(
            @Nullable String item,
            @Nullable Feed feed,
            boolean forcedVentilationAllowed,
            boolean holdingBrake,
            boolean keepAlive) {
        this(item, feed, forcedVentilationAllowed, holdingBrake, keepAlive, null, null);
    }

    /** Whether reserves are asked for. */
    public boolean asksReserves() {
        return Boolean.TRUE.equals(reserves);
    }

    /** The same without a holding brake. */
    public DriveSelection withoutBrake() {
        return new DriveSelection(item, feed, forcedVentilationAllowed, false, keepAlive, gear, reserves);
    }
}
