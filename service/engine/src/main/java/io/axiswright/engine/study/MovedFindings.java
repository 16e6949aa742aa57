package io.axiswright.engine.study;

import io.axiswright.engine.finding.Finding;
import java.util.List;
import java.util.function.UnaryOperator;

/** Leads the findings of a study, and of each of its disciplines, to other places in the request. */
final class MovedFindings {

    private static final String FINDINGS = "findings";

    private MovedFindings() {}

    static StudyResult of(StudyResult study, UnaryOperator<String> place) {
        Object moved = inPart(study, place);
        Components components = Components.of(study);
        for (int k = 0; k < components.count(); k++) {
            Object part = components.get(study, k);
            if (components.onTheWire(k) && part != null && Records.isTree(part)) {
                moved = components.with(moved, k, inPart(part, place));
            }
        }
        return (StudyResult) moved;
    }

    private static Object inPart(Object part, UnaryOperator<String> place) {
        Components components = Components.of(part);
        int at = components.place(FINDINGS);
        if (at < 0 || !(components.get(part, at) instanceof List<?> findings)) {
            return part;
        }
        List<Finding> moved = findings.stream()
                .map(Finding.class::cast)
                .map(finding -> finding.at(place.apply(finding.pointer())))
                .toList();
        return components.with(part, at, moved);
    }
}
