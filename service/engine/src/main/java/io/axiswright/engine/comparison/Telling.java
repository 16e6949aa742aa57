package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.Wording;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Consequences in sentences. */
final class Telling {

    private Telling() {}

    static String of(Difference consequence, List<Cause> causes, List<Difference> changes) {
        String what = switch (consequence.kind()) {
            case ADDED -> consequence.place() + " came: " + words(consequence.after());
            case REMOVED -> consequence.place() + " went: " + words(consequence.before());
            case CHANGED ->
                consequence.place() + " went from " + words(consequence.before()) + " to " + words(consequence.after());
        };
        return what + because(causes, changes) + ".";
    }

    private static String because(List<Cause> causes, List<Difference> changes) {
        if (causes.isEmpty()) {
            return changes.size() > 1 ? ", which no single change brings or undoes" : "";
        }
        return ", because "
                + causes.stream().map(cause -> reason(cause, changes)).collect(Collectors.joining(" and "));
    }

    private static String reason(Cause cause, List<Difference> changes) {
        Difference change = changes.get(Integer.parseInt(cause.change().substring("change-".length())) - 1);
        String what = switch (change.kind()) {
            case ADDED -> change.place() + " was added";
            case REMOVED -> change.place() + " was removed";
            case CHANGED -> change.place() + " changed from " + words(change.before()) + " to " + words(change.after());
        };
        return what
                + switch (cause.role()) {
                    case NECESSARY_AND_SUFFICIENT -> " (this alone does it)";
                    case NECESSARY -> " (needed, but not enough by itself)";
                    case SUFFICIENT -> " (enough by itself, but not the only reason)";
                    case CONTRIBUTING -> " (it has a part in it)";
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
        return Records.keyed(List.of(part)).keySet().stream()
                .filter(key -> !key.equals("0"))
                .findFirst()
                .orElseGet(() -> part.getClass().getSimpleName());
    }
}
