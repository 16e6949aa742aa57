package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A control supply that is tried at a place for one group of chains after the other. */
final class TriedSupply {

    private final ControlSupply supply;
    private final SupplyPlace place;
    private final boolean matchesMains;
    private final ControlPowerRequest request;
    private final SourceVoltages source;
    private final FarEnd farEnd;
    private final Map<Integer, List<ChainPlan>> plans = new HashMap<>();

    TriedSupply(ControlSupply supply, SupplyPlace place, ControlPowerRequest request) {
        this.supply = supply;
        this.place = place;
        this.matchesMains = request.throughTransformer() || MainsMatch.hasVoltage(request.mains(), supply);
        this.request = request;
        this.source = SourceVoltages.of(supply);
        double available = supply.ratedCurrent().si() * SupplyGroup.derating(supply, request.site());
        this.farEnd =
                new FarEnd(request.protections(), FaultSource.of(source.low(), available, supply.overload(), 1, 0));
    }

    /** The fewest in parallel; one alone is never redundant, so it is tried only where there is no choice. */
    int fewest() {
        return request.spec().isRedundant() ? Math.min(2, supply.mostParallel()) : 1;
    }

    int most() {
        return supply.mostParallel();
    }

    /**
     * The chains on so many of it, their protection not worked out yet.
     *
     * @param chains a bit for each
     */
    SupplyGroup group(long chains, int count) {
        List<ChainPlan> all = new ArrayList<>();
        for (long left = chains; left != 0; left &= left - 1) {
            all.addAll(plan(Long.numberOfTrailingZeros(left)));
        }
        return SupplyGroup.of(supply, place.id(), count, matchesMains, all, request);
    }

    private List<ChainPlan> plan(int network) {
        return plans.computeIfAbsent(network, k -> place.plan(k, source, farEnd));
    }
}
