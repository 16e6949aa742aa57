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
 * @param reserves whether to work out how fast and how loaded the axis could run at most; not if absent
 */
public record DriveSelection(
        @Nullable String item,
        @Nullable Feed feed,
        boolean forcedVentilationAllowed,
        boolean holdingBrake,
        boolean keepAlive,
        @Nullable Boolean reserves) {

    /** A selection that asks for no reserves. */
    public DriveSelection(
            @Nullable String item,
            @Nullable Feed feed,
            boolean forcedVentilationAllowed,
            boolean holdingBrake,
            boolean keepAlive) {
        this(item, feed, forcedVentilationAllowed, holdingBrake, keepAlive, null);
    }

    /** Whether reserves are asked for. */
    public boolean asksReserves() {
        return Boolean.TRUE.equals(reserves);
    }
}
