package io.axiswright.engine.braking;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.List;

/**
 * Works out what the axes return to their DC buses, how far the bus voltages rise, and which braking unit each bus needs.
 * Stateless.
 */
public final class BrakingStudy {

    /**
     * Studies every DC bus.
     *
     * @throws InvalidDesign if an id is used twice, a stop zone is named that is not there, or a chopper would switch off above
     *     the voltage at which it switches on
     */
    public BrakingResult study(BrakingRequest request) {
        RequestCheck.pass(request);
        List<GroupBraking> groups = new ArrayList<>();
        List<GroupStudy> studies = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Derivation> derivations = new ArrayList<>();
        for (BusGroup group : BusGroup.of(request.axes())) {
            GroupStudy study = GroupStudy.of(group, request);
            studies.add(study);
            groups.add(new GroupAnswer(study, request).braking());
            findings.addAll(new GroupFindings(study, request).all());
            derivations.addAll(new GroupDerivations(study, request).all());
        }
        return new BrakingResult(groups, BrakingTotals.of(studies), findings, derivations);
    }
}
