package io.axiswright.engine.comparison;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.Wording;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Consequences in sentences. */
final class Telling {

    private Telling() {}

    static String of(Difference consequence, Explanation explanation, List<Difference> changes, boolean allExamined) {
        String place = PlaceWords.of(consequence.path());
        String what = switch (consequence.kind()) {
            case ADDED -> place + " came" + what(consequence, consequence.after());
            case REMOVED -> place + " went" + what(consequence, consequence.before());
            case CHANGED -> changed(place, " went", consequence);
        };
        return what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1)
                + because(explanation, changes, allExamined) + ".";
    }

    /** What came or went, where the place does not name it already. */
    private static String what(Difference consequence, @Nullable Object value) {
        boolean named = value instanceof Record part && Records.isTree(part) && !(part instanceof Finding)
                || consequence.path().getLast().text().equals(value);
        return named ? "" : ": " + words(value);
    }

    private static String changed(String place, String verb, Difference change) {
        return change.before() instanceof List<?> before && change.after() instanceof List<?> after
                ? place + " changed: " + ListWords.of(before, after)
                : place + verb + " " + fromTo(change.before(), change.after());
    }

    private static String fromTo(@Nullable Object before, @Nullable Object after) {
        if (before instanceof Quantity first && after instanceof Quantity second) {
            return Wording.fromTo(first, second);
        }
        return before instanceof Double first && after instanceof Double second
                ? Wording.fromTo(new Ratio(first), new Ratio(second))
                : "from " + words(before) + " to " + words(after);
    }

    private static String because(Explanation explanation, List<Difference> changes, boolean allExamined) {
        Joint joint = explanation.joint();
        if (!joint.changes().isEmpty()) {
            return ", because "
                    + joint.changes().stream().map(k -> what(changes.get(k))).collect(Collectors.joining(" and "))
                    + (joint.minimal()
                            ? " (only together)"
                            : " (together; whether all of it is needed was not examined)");
        }
        List<Part> parts = explanation.parts();
        if (parts.isEmpty()) {
            return nothing(changes.size(), allExamined);
        }
        Map<Role, List<Part>> byRole =
                parts.stream().collect(Collectors.groupingBy(Part::role, LinkedHashMap::new, Collectors.toList()));
        return ", because "
                + byRole.entrySet().stream()
                        .map(entry -> entry.getValue().stream()
                                        .map(part -> what(changes.get(part.change())))
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

    private static String what(Difference change) {
        String place = PlaceWords.of(change.path());
        return switch (change.kind()) {
            case ADDED -> place + " was added";
            case REMOVED -> place + " was removed";
            case CHANGED -> changed(place, " changed", change);
        };
    }

    private static String words(@Nullable Object value) {
        return switch (value) {
            case null -> "nothing";
            case Quantity quantity -> Wording.of(quantity);
            case Money money -> money.amount().toPlainString() + " " + money.currency();
            case Finding finding -> finding.text().replaceFirst("\\.$", "");
            case ConductorSize size -> size.label();
            case String text -> text;
            case CodeBasis.IEC_60204_1 -> "IEC 60204-1";
            case CodeBasis.NFPA_79 -> "NFPA 79";
            case Enum<?> word -> word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            case Boolean flag -> flag ? "yes" : "no";
            case Double number -> Wording.of(new Ratio(number));
            case Number number -> number.toString();
            case List<?> list -> list.stream().map(Telling::words).collect(Collectors.joining(", "));
            case Record part -> named(part);
            default -> value.toString();
        };
    }

    /** A whole part is told by its name; its numbers are in the data beside the sentence. */
    private static String named(Record part) {
        String key = Records.key(part);
        return key == null ? PlaceWords.words(part.getClass().getSimpleName()) : key;
    }
}
