package io.axiswright.engine.braking;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * One DC bus of the result.
 *
 * @param braking what it has to take, and what it needs for that
 * @param totals what it adds to the whole machine
 * @param findings what is to be said about it
 * @param derivations how its important numbers came about
 */
record StudiedGroup(GroupBraking braking, BrakingTotals totals, List<Finding> findings, List<Derivation> derivations) {

    /**
     * Studies one bus.
     *
     * @param request a request for it alone
     */
    static StudiedGroup of(BrakingRequest request) {
        GroupStudy study = GroupStudy.of(BusGroup.of(request.axes()).getFirst(), request);
        return new StudiedGroup(
                new GroupAnswer(study, request).braking(),
                BrakingTotals.of(study),
                new GroupFindings(study, request).all(),
                new GroupDerivations(study, request).all());
    }
}
