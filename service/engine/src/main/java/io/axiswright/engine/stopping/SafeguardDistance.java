package io.axiswright.engine.stopping;

import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * How far one safeguard has to be from the hazard.
 *
 * @param safeguard its id
 * @param responseTime overall system response time T: its own response, the zone's reaction, the stopping of its slowest axis;
 *     absent if one never rests
 * @param approachSpeed approach speed K that decides
 * @param reach how far one reaches before being noticed: C, or D_DS and Z
 * @param leastDistance least distance from the hazard; absent if an axis never rests
 * @param formula the formula that decides
 * @param clause the rule behind it
 * @param distance the distance the design states; absent if it states none
 */
public record SafeguardDistance(
        String safeguard,
        @Nullable Time responseTime,
        Speed approachSpeed,
        Length reach,
        @Nullable Length leastDistance,
        String formula,
        String clause,
        @Nullable Length distance) {}
