package io.axiswright.engine.comparison;

import io.axiswright.engine.bill.LineKind;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Wording;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Changes and the values between which they are, in words. */
final class ChangeWords {

    /** Begins the id of a line of the bill, which is kind and item. */
    private static final Pattern LINE = Pattern.compile(Arrays.stream(LineKind.values())
            .map(kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .collect(Collectors.joining("|", "^(?:", "):")));

    private ChangeWords() {}

    /** A change of the caller: "load of axis lift changed from 55 kg to 110 kg". */
    static String of(Difference change) {
        String place = PlaceWords.of(change.path());
        return switch (change.kind()) {
            case ADDED -> place + " was added";
            case REMOVED -> place + " was removed";
            case CHANGED -> changed(place, " changed", change);
        };
    }

    /** A place whose value is another one, with what the value does. */
    static String changed(String place, String verb, Difference change) {
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
                : "from " + of(before) + " to " + of(after);
    }

    /** A value. */
    static String of(@Nullable Object value) {
        return switch (value) {
            case null -> "nothing";
            case Quantity quantity -> Wording.of(quantity);
            case Money money -> money.amount().toPlainString() + " " + money.currency();
            case ConductorSize size -> size.label();
            case String text -> LINE.matcher(text).replaceFirst("");
            case CodeBasis.IEC_60204_1 -> "IEC 60204-1";
            case CodeBasis.NFPA_79 -> "NFPA 79";
            // letters that stand for themselves, such as type B
            case Enum<?> word when word.name().length() <= 2 -> word.name();
            case Enum<?> word -> word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            case Boolean flag -> flag ? "yes" : "no";
            case Double number -> Wording.of(new Ratio(number));
            case Number number -> number.toString();
            case List<?> list -> list.stream().map(ChangeWords::of).collect(Collectors.joining(", "));
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
