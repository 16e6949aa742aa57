package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Consequences in sentences. */
final class Telling {

    private Telling() {}

    static String of(
            Difference consequence, Explanation explanation, List<ChangeSet> sets, int changes, boolean allExamined) {
        String place = PlaceWords.of(consequence.path());
        String what = switch (consequence.kind()) {
            case ADDED -> place + " came" + what(consequence, consequence.after());
            case REMOVED -> place + " went" + what(consequence, consequence.before());
            case CHANGED -> ChangeWords.changed(place, " went", consequence);
        };
        return what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1)
                + because(explanation, sets, changes, allExamined) + ".";
    }

    /** What came or went, where the place does not name it already. */
    private static String what(Difference consequence, @Nullable Object value) {
        boolean named = value instanceof Record part && Records.isTree(part) && !(part instanceof Finding)
                || consequence.path().getLast().text().equals(value);
        return named ? "" : ": " + ChangeWords.of(value);
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
