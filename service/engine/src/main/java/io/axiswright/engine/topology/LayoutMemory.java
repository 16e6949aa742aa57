package io.axiswright.engine.topology;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/**
 * Plans the layouts of designs that differ little from each other, each once. For one thread.
 */
public final class LayoutMemory {

    private final LayoutPlanning planning;
    private final SequencedMap<TopologyRequest, Planned> known = new LinkedHashMap<>();

    /** A memory of what a planning finds. */
    public LayoutMemory(LayoutPlanning planning) {
        this.planning = planning;
    }

    /** The layout of a request as the planning finds it by itself. */
    public TopologyResult plan(TopologyRequest request) {
        return planned(request).result();
    }

    /**
     * A layout of a request much like another: that of the other, or another one known, where it is proven to be as near to the cheapest
     * here as it was there, else what the planning finds by itself. An unfinished search begun anew for every little difference would
     * move axes by chance.
     */
    public TopologyResult plan(TopologyRequest request, TopologyRequest near) {
        Planned first = planned(near);
        if (!known.containsKey(request)) {
            List<Planned> nearestFirst = new ArrayList<>(known.sequencedValues());
            nearestFirst.removeIf(one -> one == first);
            nearestFirst.addFirst(first);
            known.put(request, planning.planned(request, nearestFirst));
        }
        return planned(request).result();
    }

    private Planned planned(TopologyRequest request) {
        return known.computeIfAbsent(request, asked -> planning.planned(asked, List.of()));
    }
}
