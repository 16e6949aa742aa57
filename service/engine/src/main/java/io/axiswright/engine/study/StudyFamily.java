package io.axiswright.engine.study;

import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.memory.Memory;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.LayoutMemory;
import io.axiswright.engine.topology.LayoutPlanning;
import io.axiswright.engine.topology.SearchGate;

/** Studies of designs that differ little from each other, which share what their differences do not touch. For one thread. */
public final class StudyFamily {

    private final LayoutMemory layouts;
    private final Memory memory = new Memory();

    /** A family whose searches for layouts pass a gate. */
    public StudyFamily(SearchGate gate) {
        this.layouts = new LayoutMemory(new LayoutPlanning(gate));
    }

    /**
     * The whole system, as it is studied by itself.
     *
     * @throws InvalidDesign if the design cannot be given a meaning
     */
    public StudyResult system(StudyRequest request) {
        return SystemStudy.planned(layouts::plan, memory).system(request);
    }

    /**
     * The whole system. The control network is that of another design of the family where that is proven to be as near to the cheapest
     * here as it was there, so that of two layouts that cost the same, or between which an unfinished search would choose by
     * chance, the one already known is kept.
     *
     * @param near a design of the family that can be given a meaning, from which this one differs little
     * @throws InvalidDesign if the design cannot be given a meaning
     */
    public StudyResult system(StudyRequest request, StudyRequest near) {
        return SystemStudy.planned(
                        asked -> layouts.plan(
                                asked,
                                NetworkParts.request(CanonicalRequest.of(near).value(), LayoutEffort.PROVEN)),
                        memory)
                .system(request);
    }
}
