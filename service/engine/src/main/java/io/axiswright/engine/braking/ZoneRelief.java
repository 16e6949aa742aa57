package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * How long a stop zone would have to decelerate for the bus to need no braking unit for it. A longer stop does not always
 * return less energy (copper losses fall, and a sinking load returns more the longer it sinks), so lengthening times are tried
 * in turn, a quarter longer each, up to {@value ZoneReliefs#LONGEST} times the one asked for, and the first that does is refined.
 *
 * @param zone its id
 * @param decelerationTime the shortest found; absent if none does within that range
 */
public record ZoneRelief(String zone, @Nullable Time decelerationTime) {}
