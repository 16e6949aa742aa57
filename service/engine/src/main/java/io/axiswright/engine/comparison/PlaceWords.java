package io.axiswright.engine.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Places in a design or a result as an engineer would say them: "peak torque of axis lift". */
final class PlaceWords {

    /** What only orders the document and says nothing of the thing. */
    private static final Set<String> FRAME = Set.of(
            "design",
            "duty",
            "topology",
            "controlPower",
            "braking",
            "stopping",
            "supply",
            "conductors",
            "faults",
            "mounting",
            "figures",
            "mechanism");

    /** Lists whose elements are not called by their singular. */
    private static final Map<String, String> ONE_OF =
            Map.of("axes", "axis", "groups", "DC bus", "supplies", "control supply", "cycle", "step");

    private static final Pattern HUMP = Pattern.compile("(?<=[a-z])(?=[A-Z])");

    /** The ends of plurals that take two letters: losses, branches, boxes. */
    private static final Pattern SIBILANT = Pattern.compile("(ss|sh|ch|x)es$");

    /** What the names of instants end with: peakTorqueAt. */
    private static final String AT = "At";

    private PlaceWords() {}

    /** A place, innermost first. */
    static String of(List<Step> path) {
        List<String> parts = new ArrayList<>();
        for (int k = 0; k < path.size(); k++) {
            Step step = path.get(k);
            if (step instanceof Step.Element element && !parts.isEmpty()) {
                String list = parts.removeLast();
                parts.add(ONE_OF.getOrDefault(list, singular(words(list))) + " " + element.key());
            } else if (k == path.size() - 1 || !FRAME.contains(step.text())) {
                parts.add(step.text());
            }
        }
        return String.join(
                " of ", parts.reversed().stream().map(PlaceWords::words).toList());
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
