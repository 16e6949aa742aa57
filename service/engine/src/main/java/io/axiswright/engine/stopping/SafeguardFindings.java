package io.axiswright.engine.stopping;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.standard.Confidence;
import java.util.ArrayList;
import java.util.List;

/** What must be said about the safeguards of a stop zone. */
final class SafeguardFindings {

    private final ZoneStudy zone;
    private final List<Finding> findings = new ArrayList<>();

    private SafeguardFindings(ZoneStudy zone) {
        this.zone = zone;
    }

    static List<Finding> of(ZoneStudy zone) {
        var all = new SafeguardFindings(zone);
        for (int k = 0; k < zone.safeguards().size(); k++) {
            all.one(zone.safeguards().get(k), zone.stopping().safeguards().get(k), zone.pointer(k));
        }
        return all.findings;
    }

    private void one(SafeguardStudy study, SafeguardDistance distance, String pointer) {
        String id = distance.safeguard();
        String clause = distance.clause();
        Length least = distance.leastDistance();
        if (least == null) {
            findings.add(FindingCode.STOPPING_SAFEGUARD_VAIN.at(id, pointer, clause, null, null));
            return;
        }
        Length stated = distance.distance();
        if (stated != null && stated.si() < least.si()) {
            findings.add(FindingCode.STOPPING_SAFEGUARD_NEAR.at(id, pointer + "/distance", clause, stated, least));
        }
        if (study.height() < study.leastHeight()) {
            findings.add(FindingCode.STOPPING_FIELD_LOW.at(
                    id,
                    pointer + "/detection/height",
                    clause,
                    new Length(study.height()),
                    new Length(study.leastHeight())));
        }
        findings.add(FindingCode.STOPPING_DISTANCE_CALCULATED.at(id, pointer, clause, least, distance.responseTime()));
        if (study.rule().source().confidence() == Confidence.FROM_MEMORY) {
            findings.add(FindingCode.STOPPING_RULE_FROM_MEMORY.at(id, pointer, clause, null, null));
        }
    }
}
