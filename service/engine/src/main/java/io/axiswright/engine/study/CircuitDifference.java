package io.axiswright.engine.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A circuit that is not the same in two markets. Circuits are matched by the loads they feed, for their ids count through each
 * market by itself.
 *
 * @param loads ids of the loads it feeds; none for the feeder
 * @param here the circuit here; absent if these loads are fed together only in the other market
 * @param there the circuit in the other market; absent if these loads are fed together only here
 * @param differing what differs
 */
public record CircuitDifference(
        List<String> loads,
        @Nullable MarketCircuit here,
        @Nullable MarketCircuit there,
        List<CircuitAspect> differing) {}
