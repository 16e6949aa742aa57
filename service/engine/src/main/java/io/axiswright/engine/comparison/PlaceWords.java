package io.axiswright.engine.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Places in a design or a result as an engineer would say them: "peak torque of axis lift". */
final class PlaceWords {

    /** What only orders the document and says nothing of the thing. */
    private static final Set<String> DISCIPLINES = Set.of(
            "design",
            "duty",
            "topology",
            "controlPower",
            "braking",
            "stopping",
            "supply",
            "conductors",
            "containment",
            "enclosures",
            "energy",
            "harmonics",
            "faults",
            "mounting");

    /** The same, however deep. */
    private static final Set<String> FRAME = Set.of("figures", "mechanism");

    /** Of which there is one. */
    private static final Set<String> SOLE = Set.of(
            "catalogue", "site", "mains", "network", "host", "installation", "operation", "feeder", "billOfMaterials");

    /** As words a member that is not said. */
    private static final String UNSAID = "-";

    /** Begins a phrase around which nothing has to be said. */
    private static final String WHOLE = "/";

    /** Begins a phrase that follows as it stands. */
    private static final String FOLLOWING = "~";

    /** Lists whose elements are not called by their singular. */
    private static final Map<String, String> ONE_OF =
            Map.of("axes", "axis", "groups", "DC bus", "supplies", "control supply", "cycle", "step");

    private static final Pattern HUMP = Pattern.compile("(?<=[a-z])(?=[A-Z])");

    /** The ends of plurals that take two letters: losses, branches, boxes. */
    private static final Pattern SIBILANT = Pattern.compile("(ss|sh|ch|x)es$");

    /** What the names of instants end with: peakTorqueAt. */
    private static final String AT = "At";

    private PlaceWords() {}

    /** A place of which nothing but the way to it is known, innermost first. */
    static String of(List<Step> path) {
        return of(null, path);
    }

    /**
     * A place, innermost first.
     *
     * @param root what the path begins at
     */
    static String of(@Nullable Object root, List<Step> path) {
        List<String> parts = new ArrayList<>();
        Object owner = null;
        Object value = root;
        String list = "";
        for (int k = 0; k < path.size(); k++) {
            boolean last = k == path.size() - 1;
            switch (path.get(k)) {
                case Step.Member(String name) -> {
                    owner = value;
                    list = name;
                    value = Patch.at(value, List.of(path.get(k)));
                    String words = PartWords.member(owner, name);
                    add(words == null ? member(name, k, last) : words, parts);
                }
                case Step.Element element -> {
                    parts.removeLast();
                    String words = PartWords.element(owner, list, element);
                    add(words == null ? called(list, element) : last ? named(words) : words, parts);
                    value = element.value();
                }
            }
        }
        return joined(parts.reversed());
    }

    private static String member(String name, int depth, boolean last) {
        boolean frame = depth == 0 && DISCIPLINES.contains(name) || FRAME.contains(name);
        if (frame && !last) {
            return "";
        }
        return last || !SOLE.contains(name) ? words(name) : "the " + words(name);
    }

    private static void add(String words, List<String> parts) {
        if (words.startsWith(WHOLE)) {
            parts.clear();
        }
        parts.add(words.startsWith(WHOLE) ? words.substring(1) : words.equals(UNSAID) ? "" : words);
    }

    /** An element by its key, or by its place counted from 1 where it has none. */
    private static String called(String list, Step.Element element) {
        boolean byPlace = element.value() != null
                && Records.key(element.value()) == null
                && element.key().equals(String.valueOf(element.place()));
        return ONE_OF.getOrDefault(list, singular(words(list))) + " "
                + (byPlace ? String.valueOf(element.place() + 1) : element.key());
    }

    /** What follows with a preposition as a name of its own: of "~in case cycle" it is "case cycle". */
    private static String named(String words) {
        return words.startsWith(FOLLOWING) ? words.substring(words.indexOf(' ') + 1) : words;
    }

    private static String joined(List<String> parts) {
        var place = new StringBuilder();
        for (String part : parts) {
            if (!part.isEmpty()) {
                String way = part.startsWith(FOLLOWING) ? " " + part.substring(1) : " of " + part;
                place.append(place.isEmpty() ? part : way);
            }
        }
        return place.toString();
    }

    /** The name of a member in words: "peak torque"; what holds a blank is words already. */
    static String words(String name) {
        if (name.endsWith(AT)) {
            return "instant of " + words(name.substring(0, name.length() - AT.length()));
        }
        return name.contains(" ") ? name : HUMP.matcher(name).replaceAll(" ").toLowerCase(Locale.ROOT);
    }

    private static String singular(String plural) {
        if (plural.endsWith("ies")) {
            return plural.substring(0, plural.length() - 3) + "y";
        }
        if (SIBILANT.matcher(plural).find()) {
            return plural.substring(0, plural.length() - 2);
        }
        return plural.endsWith("s") ? plural.substring(0, plural.length() - 1) : plural;
    }

    /** Many of what a word names. */
    static String plural(String word) {
        if (word.endsWith("s") && !word.endsWith("ss")) {
            return word;
        }
        if (word.endsWith("y") && !word.endsWith("ay")) {
            return word.substring(0, word.length() - 1) + "ies";
        }
        return SIBILANT.matcher(word + "es").find() ? word + "es" : word + "s";
    }
}
