package io.axiswright.engine.comparison;

import io.axiswright.engine.design.Design;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Recognises parts that only changed their id. Without that a renamed axis would be one that went and another that came, and
 * so would everything of it in the result.
 *
 * <p>Of the parts of one kind whose id stands in one design only, two are the same if they are more alike to each other than to any
 * other, and at most a tenth of what they state besides their ids differs. So up to three or four things may have changed on an
 * axis, which usually states thirty to forty, but nothing on a part that states less than ten. No other outcome is possible from
 * the second design to the first.
 */
final class Renames {

    /** Our choice: what differs in more is another part. */
    static final double MOST_UNLIKE = 0.1;

    private static final String ID = "id";

    private Renames() {}

    /** Parts of one kind that stand under another id in the second design; each at most once, in the order of the first. */
    static List<Rename> among(NamedPart what, Unmatched unmatched) {
        return MutualBest.of(unmatched.gone(), unmatched.come(), Members::unlike, MOST_UNLIKE).entrySet().stream()
                .map(pair -> new Rename(what, pair.getKey(), pair.getValue()))
                .toList();
    }

    /** The design with the ids of the second one. */
    static Design applied(List<Rename> renames, Design design) {
        Map<NamedPart, Map<String, String>> names = new EnumMap<>(NamedPart.class);
        renames.forEach(rename ->
                names.computeIfAbsent(rename.what(), _ -> new HashMap<>()).put(rename.before(), rename.after()));
        return names.isEmpty()
                ? design
                : (Design) new TextReplacement(
                                (owner, component, text) -> renamed(text, what -> tells(what, owner, component), names),
                                Set.of())
                        .in(design);
    }

    /** Whether a text of the record is the id of such a part, the record's own or one it refers to. */
    private static boolean tells(NamedPart what, Object owner, String component) {
        return component.equals(ID) ? what.type().isInstance(owner) : what.isReference(component);
    }

    private static String renamed(String id, Predicate<NamedPart> ofKind, Map<NamedPart, Map<String, String>> names) {
        for (var kind : names.entrySet()) {
            if (ofKind.test(kind.getKey())) {
                return kind.getValue().getOrDefault(id, id);
            }
        }
        return id;
    }
}
