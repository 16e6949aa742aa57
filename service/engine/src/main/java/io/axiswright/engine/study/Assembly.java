package io.axiswright.engine.study;

import io.axiswright.engine.energy.EnergyResult;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.harmonic.HarmonicResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts the parts of a study together, and adds what can be said only of the whole. */
final class Assembly {

    private Assembly() {}

    static StudyResult of(StudyRun run) {
        List<Finding> findings = findings(run);
        return new StudyResult(
                EngineVersion.CURRENT,
                run.request().codeBasis(),
                findings.stream().noneMatch(f -> f.severity() == Severity.VIOLATION),
                findings,
                run.duty(),
                run.topology(),
                run.controlPower(),
                run.braking(),
                run.stopping(),
                run.supply(),
                run.conductors(),
                run.containment(),
                run.enclosures(),
                run.energy(),
                run.harmonics(),
                run.faults(),
                run.mounting(),
                run.billOfMaterials(),
                null);
    }

    private static List<Finding> findings(StudyRun run) {
        List<Finding> all = new ArrayList<>(run.findingsBeforeBill());
        all.addAll(run.billOfMaterials().findings());
        all.add(FindingCode.STUDY_QUALIFIED_PERSON.at(
                run.request().design().name(), "/design", "IEC 60204-1:2016 clause 1; NFPA 79 clause 1.1", null, null));
        // What two disciplines say alike is said once.
        return all.stream()
                .distinct()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** Of everything but the bill. */
    static List<Finding> findingsBeforeBill(StudyRun run) {
        List<Finding> all = new ArrayList<>();
        all.addAll(run.duty().findings());
        all.addAll(run.topology().findings());
        all.addAll(run.controlPower().findings());
        all.addAll(run.braking().findings());
        all.addAll(run.stopping().findings());
        all.addAll(run.supply().findings());
        all.addAll(run.conductors().findings());
        all.addAll(run.containment().findings());
        all.addAll(run.enclosures().findings());
        EnergyResult energy = run.energy();
        if (energy != null) {
            all.addAll(energy.findings());
        }
        HarmonicResult harmonics = run.harmonics();
        if (harmonics != null) {
            all.addAll(harmonics.findings());
        }
        all.addAll(run.faults().findings());
        all.addAll(run.mounting().findings());
        all.addAll(WholeFindings.of(run));
        return all;
    }
}
