package io.axiswright.app.wire;

import io.axiswright.engine.quantity.ConductorSize;
import java.util.Collection;
import java.util.List;

/** What would be accepted at a place, in words. */
final class Acceptable {

    private Acceptable() {}

    /** What a shape accepts. */
    static String of(Shape shape) {
        return switch (shape) {
            case RecordShape record -> "an object with " + record.accepted();
            case Shape.Choice choice ->
                "an object with " + choice.discriminator() + " "
                        + words(choice.kinds().keySet());
            case Shape.Many many -> "a list of " + many.min() + " to " + many.max() + " elements";
            case Shape.Table _ -> "an object";
            case Shape.Measure measure ->
                "an object with value and unit, the unit "
                        + words(measure.units().keySet());
            case Shape.Plain plain -> plain.checked().inWords(x -> x, "") + number(plain.digits());
            case Shape.Text text -> "a text of 1 to " + text.maxLength() + " characters";
            case Shape.Token token -> token.accepted();
            case Shape.Truth _ -> "true or false";
            case Shape.Word word -> words(word.words().keySet());
            case Shape.Price _ -> "an object with amount and currency";
            case Shape.Size _ -> ConductorSize.ACCEPTED;
            case Shape.Coefficients _ -> "a list of numbers";
            case Shape.Any _ -> "any value";
        };
    }

    /** A closed list of words: "A, B or C". */
    static String words(Collection<String> words) {
        List<String> list = List.copyOf(words);
        int last = list.size() - 1;
        return last < 1 ? String.join("", list) : String.join(", ", list.subList(0, last)) + " or " + list.get(last);
    }

    private static String number(Shape.Digits digits) {
        return switch (digits) {
            case INTEGER, LONG -> ", whole";
            case REAL -> "";
            case DECIMAL -> ", at most 15 digits before the point and 6 after it";
        };
    }
}
