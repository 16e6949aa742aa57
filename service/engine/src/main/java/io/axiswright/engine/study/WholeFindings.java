package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyLimit;
import io.axiswright.engine.duty.LimitUse;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.supply.BranchCircuit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What no discipline can see alone: buses without or with clashing sources, and fans that would help but are not to be had. */
final class WholeFindings {

    private final StudyRun run;
    private final List<Axis> axes;
    private final List<Finding> findings = new ArrayList<>();

    private WholeFindings(StudyRun run) {
        this.run = run;
        this.axes = run.request().design().axes();
    }

    static List<Finding> of(StudyRun run) {
        var whole = new WholeFindings(run);
        whole.unfedBuses();
        whole.fansNotToBeHad();
        whole.busesAcrossLines();
        return whole.findings;
    }

    /** A drive unit fed from a DC bus needs another on its bus that is fed from the mains, or a source we do not know. */
    private void unfedBuses() {
        var buses = new FedBuses(run.request().design(), run.stock(), run.duty());
        for (int k = 0; k < axes.size(); k++) {
            DriveUnit unit = unit(k);
            if (unit != null && !buses.feed(axes.get(k), unit)) {
                findings.add(FindingCode.STUDY_DC_BUS_UNFED.at(
                        axes.get(k).id(), "/design/axes/" + k, "completeness", unit.ratedVoltage(), null));
            }
        }
    }

    /** A drive unit that only gets too warm would do with a fan; where one may be had but is not, it is said why. */
    private void fansNotToBeHad() {
        for (int k = 0; k < axes.size(); k++) {
            AxisDuty duty = run.duty().axes().get(k);
            if (axes.get(k).drive().forcedVentilationAllowed()
                    && onlyTooWarm(duty)
                    && duty.candidates().stream().allMatch(candidate -> candidate.ventilationKit() == null)) {
                findings.add(FindingCode.STUDY_VENTILATION_NONE.at(
                        axes.get(k).id(),
                        "/design/axes/" + k + "/drive",
                        "completeness",
                        new Ratio(run.request().catalogue().ventilationKits().size()),
                        null));
            }
        }
    }

    private static boolean onlyTooWarm(AxisDuty duty) {
        List<DutyLimit> broken = duty.limits().stream()
                .filter(LimitUse::broken)
                .map(LimitUse::limit)
                .toList();
        return !broken.isEmpty()
                && EnumSet.of(DutyLimit.CONTINUOUS, DutyLimit.WINDING).containsAll(broken);
    }

    /** Rectifiers on different lines would add line-to-line voltage onto a bus that is meant for less. */
    private void busesAcrossLines() {
        Map<String, List<String>> lines = new HashMap<>();
        for (BranchCircuit circuit : run.supply().circuits()) {
            circuit.loads().forEach(load -> lines.put(load, source(circuit)));
        }
        Map<String, Set<List<String>>> sources = new LinkedHashMap<>();
        for (Axis axis : axes) {
            List<String> source = lines.get(axis.id());
            if (axis.busGroup() != null && source != null) {
                sources.computeIfAbsent(axis.busGroup(), bus -> new HashSet<>()).add(source);
            }
        }
        sources.forEach((bus, different) -> {
            if (different.size() > 1) {
                findings.add(FindingCode.STUDY_BUS_ACROSS_LINES.at(
                        bus, "/design/axes", "derived", new Ratio(different.size()), new Ratio(1)));
            }
        });
    }

    /** The lines of a circuit; those behind a transformer are not those of the mains. */
    private static List<String> source(BranchCircuit circuit) {
        String transformer = circuit.transformer();
        return transformer == null
                ? circuit.lines()
                : circuit.lines().stream().map(line -> transformer + " " + line).toList();
    }

    private @Nullable DriveUnit unit(int axis) {
        return run.stock().find(DriveUnit.class, run.duty().axes().get(axis).driveUnit());
    }
}
