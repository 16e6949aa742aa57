package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.ProtectiveConductors;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds protective-conductor currents against the rule on reinforced protective conductors, and the whole against what a
 * residual-current device for the protection of people leaves room for.
 */
final class LeakageCheck {

    private LeakageCheck() {}

    static List<Finding> of(CodeBasis basis, List<LoadGroup> groups, List<BranchCircuit> circuits, Feeder feeder) {
        var findings = new ArrayList<Finding>();
        for (int k = 0; k < circuits.size(); k++) {
            var circuit = circuits.get(k);
            conductor(basis, "circuit " + circuit.id(), groups.get(k).pointer(), circuit.leakageCurrent(), findings);
        }
        conductor(basis, "the feeder", Feeder.POINTER, feeder.leakageCurrent(), findings);
        var rating = Rule.RESIDUAL_CURRENT_RATING.under(basis);
        var share = Rule.RESIDUAL_CURRENT_SHARE.under(basis);
        var room = new Current(rating.value() * share.value());
        if (!Limits.within(feeder.leakageCurrent().si(), room.si())) {
            findings.add(FindingCode.SUPPLY_RESIDUAL_DEVICE_TRIPS.at(
                    "the machine", Feeder.POINTER, share.clause(), feeder.leakageCurrent(), room));
        }
        return findings;
    }

    private static void conductor(
            CodeBasis basis, String subject, String pointer, Current leakage, List<Finding> findings) {
        var rule = ProtectiveConductors.reinforcement(basis);
        Current limit = rule.value().above();
        if (!Limits.within(leakage.si(), limit.si())) {
            findings.add(FindingCode.SUPPLY_LEAKAGE_HIGH.at(subject, pointer, rule.clause(), leakage, limit));
        }
    }
}
