package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
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

    /** The circuits of a panel and its feeder. */
    static List<Finding> ofCircuits(CodeBasis basis, Panel panel, FeederPlace place) {
        var findings = new ArrayList<Finding>();
        var circuits = panel.circuits();
        for (int k = 0; k < circuits.size(); k++) {
            var circuit = circuits.get(k);
            String pointer = panel.groups().get(k).pointer();
            conductor(basis, "circuit " + circuit.id(), pointer, circuit.leakageCurrent(), findings);
        }
        conductor(basis, place.subject(), place.pointer(), panel.feeder().leakageCurrent(), findings);
        return findings;
    }

    /** The mains panel, and the whole. */
    static List<Finding> ofMains(CodeBasis basis, Panel panel, FeederPlace place) {
        var findings = ofCircuits(basis, panel, place);
        var feeder = panel.feeder();
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
        var rule = ProtectiveConductors.reinforcement(basis, ConductorMaterial.COPPER);
        Current limit = rule.value().above();
        if (!Limits.within(leakage.si(), limit.si())) {
            findings.add(FindingCode.SUPPLY_LEAKAGE_HIGH.at(subject, pointer, rule.clause(), leakage, limit));
        }
    }
}
