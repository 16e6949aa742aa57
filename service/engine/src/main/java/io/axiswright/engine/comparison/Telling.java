package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.study.StudyResult;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Consequences in sentences. */
final class Telling {

    private Telling() {}

    /**
     * A consequence with its causes.
     *
     * @param root the result in which it is
     */
    static String of(
            StudyResult root,
            Difference consequence,
            Explanation explanation,
            List<ChangeSet> sets,
            int changes,
            boolean allExamined) {
        String what = consequence.before() instanceof Finding || consequence.after() instanceof Finding
                ? FindingWords.of((Finding) consequence.before(), (Finding) consequence.after())
                : what(PlaceWords.of(root, consequence.path()), consequence);
        return what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1)
                + because(explanation, sets, changes, allExamined) + ".";
    }

    private static String what(String place, Difference consequence) {
        return switch (consequence.kind()) {
            case ADDED ->
                consequence.after() instanceof List<?> list
                        ? place + " are new: " + ChangeWords.of(list)
                        : isNamed(consequence, consequence.after())
                                ? place + " is new"
                                : place + " is now " + ChangeWords.of(consequence.after()) + " (there was none)";
            case REMOVED ->
                consequence.before() instanceof List<?> list
                        ? place + " are gone: " + ChangeWords.of(list)
                        : isNamed(consequence, consequence.before())
                                ? place + " is gone"
                                : place + " is gone (it was " + ChangeWords.of(consequence.before()) + ")";
            case CHANGED -> ChangeWords.changed(place, " went", consequence);
        };
    }

    /** Whether the place names it already. */
    private static boolean isNamed(Difference consequence, @Nullable Object value) {
        return Records.isTree(value) || consequence.path().getLast().text().equals(value);
    }

    private static String because(Explanation explanation, List<ChangeSet> sets, int changes, boolean allExamined) {
        Joint joint = explanation.joint();
        if (!joint.changes().isEmpty()) {
            return ", because "
                    + joint.changes().stream().map(k -> sets.get(k).words()).collect(Collectors.joining(" and "))
                    + (joint.minimal()
                            ? " (only together)"
                            : " (together; whether all of it is needed was not examined)");
        }
        List<Part> parts = explanation.parts();
        if (parts.isEmpty()) {
            return nothing(changes, allExamined);
        }
        Map<Role, List<Part>> byRole =
                parts.stream().collect(Collectors.groupingBy(Part::role, LinkedHashMap::new, Collectors.toList()));
        return ", because "
                + byRole.entrySet().stream()
                        .map(entry -> entry.getValue().stream()
                                        .map(part -> part.what().words())
                                        .collect(Collectors.joining(" and "))
                                + role(entry.getKey(), entry.getValue()))
                        .collect(Collectors.joining(", and "));
    }

    private static String nothing(int changes, boolean allExamined) {
        if (changes < 2) {
            return "";
        }
        return allExamined
                ? ", which no single change brings or undoes"
                : ", which none of the changes that were examined brings or undoes by itself";
    }

    private static String role(Role role, List<Part> parts) {
        boolean several = parts.size() > 1;
        boolean othersToo = parts.stream().allMatch(Part::canBeTakenBack);
        return switch (role) {
            case NECESSARY_AND_SUFFICIENT -> " (this alone does it)";
            case NECESSARY -> several ? " (each needed, none enough by itself)" : " (needed, but not enough by itself)";
            case SUFFICIENT ->
                several
                        ? " (each enough by itself)"
                        : othersToo ? " (enough by itself, but not the only reason)" : " (enough by itself)";
            case CONTRIBUTING -> several ? " (each has a part in it)" : " (it has a part in it)";
        };
    }
}
