package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.BeltTension;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Force;
import java.util.ArrayList;
import java.util.List;

/** Whether the strands of a toothed belt stay tight and hold. */
final class BeltChecks {

    private static final String TIGHT = "derived: the strands of a loop share the pull evenly";

    private BeltChecks() {}

    /** Pull in each strand at rest, N: as stated, or the least that keeps both tight. */
    static double pretension(Belt belt, double hardestPull) {
        BeltTension tension = belt.tension();
        return tension == null || tension.pretension() == null
                ? hardestPull / belt.pulleyDiameter().si()
                : tension.pretension().si();
    }

    static MechanismReport report(String subject, String pointer, Belt belt, double hardestPull) {
        BeltTension tension = belt.tension();
        if (tension == null) {
            return new MechanismReport(
                    List.of(FindingCode.DUTY_BELT_UNCHECKED.at(subject, pointer, TIGHT, null, null)), List.of());
        }
        double pull = hardestPull / (belt.pulleyDiameter().si() / 2);
        double pretension = pretension(belt, hardestPull);
        double strand = pretension + pull / 2;
        List<Finding> findings = new ArrayList<>();
        if (pretension < pull / 2) {
            findings.add(FindingCode.DUTY_BELT_SLACK.at(
                    subject, pointer + "/tension/pretension", TIGHT, new Force(pretension), new Force(pull / 2)));
        }
        if (strand > tension.workingLoad().si()) {
            findings.add(FindingCode.DUTY_BELT_OVERLOADED.at(
                    subject, pointer + "/tension/workingLoad", TIGHT, new Force(strand), tension.workingLoad()));
        }
        Derivation derivation = new Derivation(
                subject,
                "F_strand",
                "F_strand = F_0 + F/2",
                inputs("F_0", new Force(pretension), "F", new Force(pull)),
                TIGHT,
                new Force(strand));
        return new MechanismReport(findings, List.of(derivation));
    }
}
