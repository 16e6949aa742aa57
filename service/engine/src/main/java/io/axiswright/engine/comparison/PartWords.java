package io.axiswright.engine.comparison;

import io.axiswright.engine.graph.Components;
import io.axiswright.engine.quantity.ResourceTable;
import java.util.Map;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the parts of a result are called, from the table that says so. */
final class PartWords {

    /** The file with the words. */
    static final String FILE = "/comparison/words.csv";

    private static final Map<String, String> WORDS = ResourceTable.rows(FILE).stream()
            .collect(Collectors.toUnmodifiableMap(
                    row -> row.getField("owner") + " " + row.getField("member"), row -> row.getField("words")));

    private static final Pattern OPTION = Pattern.compile("\\[([^\\[\\]]*)]");
    private static final Pattern COMPONENT = Pattern.compile("\\{(\\w*)}");
    private static final Pattern COUNT = Pattern.compile("#(\\d+)$");

    private PartWords() {}

    /** What a member of a record is called; null if the table does not say. */
    static @Nullable String member(@Nullable Object owner, String name) {
        return owner == null ? null : WORDS.get(named(owner) + " " + name);
    }

    /** What an element of a record's list is called; null if the table does not say. */
    static @Nullable String element(@Nullable Object owner, String list, Step.Element element) {
        String phrase = member(owner, list + "[]");
        if (phrase == null) {
            return null;
        }
        String whole = OPTION.matcher(phrase)
                .replaceAll(option -> filled(option.group(1), element).contains("{}") ? "" : option.group(1));
        var count = COUNT.matcher(element.key());
        return filled(whole, element) + (count.find() ? " (" + count.group(1) + ")" : "");
    }

    private static String filled(String phrase, Step.Element element) {
        return COMPONENT
                .matcher(phrase)
                .replaceAll(found ->
                        Matcher.quoteReplacement(found.group(1).isEmpty() ? element.key() : component(found, element)));
    }

    private static String component(MatchResult found, Step.Element element) {
        Object value = null;
        if (element.value() instanceof Record part) {
            Components components = Components.of(part);
            value = components.get(part, components.place(found.group(1)));
        }
        return value instanceof Enum<?> word ? ChangeWords.of(word) : Objects.toString(value, "{}");
    }

    /** A record's package and name: "duty.AxisDuty". */
    static String named(Object owner) {
        String packaged = owner.getClass().getPackageName();
        return packaged.substring(packaged.lastIndexOf('.') + 1) + "."
                + owner.getClass().getSimpleName();
    }
}
