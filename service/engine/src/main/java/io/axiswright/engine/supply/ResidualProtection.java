package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Current;
import org.jspecify.annotations.Nullable;

/**
 * What a residual-current device ahead of the whole machine would have to be, where there is one. Whether there must be is for
 * the earthing of the site and the local code to say.
 *
 * @param role what it is for, by how the supply is earthed
 * @param standingLeakage sum of all protective-conductor currents in normal operation
 * @param type least type that sees the residual currents of every load
 * @param rating least rated residual current that the standing leakage does not trip; absent if there is none so large
 * @param highestRating highest rated residual current that still clears an earth fault in TT: with it the frames stay at 50 V or
 *     less; absent in other systems, and where the earth-fault loop is not stated
 * @param protectsPeople whether that rating protects people who touch live parts (30 mA or less)
 * @param protectsAgainstFire whether it protects against fire (300 mA or less)
 */
public record ResidualProtection(
        ResidualDeviceRole role,
        Current standingLeakage,
        ResidualDeviceType type,
        @Nullable Current rating,
        @Nullable Current highestRating,
        boolean protectsPeople,
        boolean protectsAgainstFire) {}
