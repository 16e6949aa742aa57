package io.axiswright.engine.study;

import io.axiswright.engine.finding.Finding;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.function.UnaryOperator;

/** Leads the findings of a study, and of each of its disciplines, to other places in the request. */
final class MovedFindings {

    private static final String FINDINGS = "findings";

    private MovedFindings() {}

    static StudyResult of(StudyResult study, UnaryOperator<String> place) {
        Object moved = inPart(study, place);
        for (RecordComponent component : Records.components(study)) {
            Object part = Records.get(study, component);
            if (part != null && Records.isTree(part)) {
                moved = Records.with(moved, component.getName(), inPart(part, place));
            }
        }
        return (StudyResult) moved;
    }

    private static Object inPart(Object part, UnaryOperator<String> place) {
        for (RecordComponent component : Records.components(part)) {
            if (component.getName().equals(FINDINGS) && Records.get(part, component) instanceof List<?> findings) {
                List<Finding> moved = findings.stream()
                        .map(Finding.class::cast)
                        .map(finding -> finding.at(place.apply(finding.pointer())))
                        .toList();
                return Records.with(part, FINDINGS, moved);
            }
        }
        return part;
    }
}
