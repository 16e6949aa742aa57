package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * A transformer of a standard rating.
 *
 * @param power its rated power
 * @param primaryCurrent its rated primary current
 * @param secondaryCurrent its rated secondary current
 * @param primaryDeviceLimit highest standard protective device on its primary, given one on its secondary; absent where the
 *     code sets none and conductors and inrush do. The device must not trip on {@code inrushCurrent}
 * @param secondaryDevice standard protective device on its secondary that carries the design current
 * @param secondaryDeviceLimit highest such device
 * @param inrushCurrent the worst it draws when switched on, rms over 0.1 s
 * @param lowestTap primary voltage of its lowest tap; taps match a nominal voltage that is off, and do not lessen its tolerance
 * @param highestTap primary voltage of its highest tap
 * @param tapStep from one tap to the next
 */
public record TransformerRating(
        ApparentPower power,
        Current primaryCurrent,
        Current secondaryCurrent,
        @Nullable Current primaryDeviceLimit,
        Current secondaryDevice,
        Current secondaryDeviceLimit,
        Current inrushCurrent,
        Voltage lowestTap,
        Voltage highestTap,
        Voltage tapStep) {}
