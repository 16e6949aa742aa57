package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Current;
import org.jspecify.annotations.Nullable;

/**
 * What a residual-current device ahead of the whole machine would have to be. None of the codes asks for one on a machine that
 * is connected permanently; where the site has one, it must be this.
 *
 * @param standingLeakage sum of all protective-conductor currents in normal operation
 * @param type least type that sees the residual currents of every load
 * @param rating least rated residual current that the standing leakage does not trip; absent if there is none so large
 * @param protectsPeople whether that rating protects people who touch live parts (30 mA or less)
 * @param protectsAgainstFire whether it protects against fire (300 mA or less)
 */
public record ResidualProtection(
        Current standingLeakage,
        ResidualDeviceType type,
        @Nullable Current rating,
        boolean protectsPeople,
        boolean protectsAgainstFire) {}
