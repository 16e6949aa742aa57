package io.axiswright.engine.comparison;

import io.axiswright.engine.design.Design;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Recognises parts that only changed their id. Without that a renamed axis would be one that went and another that came, and
 * so would everything of it in the result.
 */
final class Renames {

    /** A part that changed in more places than this besides its id is another part. */
    private static final int MOST_DIFFERENCES = 3;

    private static final Set<String> ID = Set.of("id");

    private Renames() {}

    /** Parts of the first design that stand in the second under another id; each of both at most once, the most alike first. */
    static List<Rename> between(Design before, Design after) {
        List<Rename> renames = new ArrayList<>();
        for (NamedPart what : NamedPart.values()) {
            Map<String, Object> gone = parts(what, before);
            Map<String, Object> come = parts(what, after);
            Set<String> kept = Set.copyOf(come.keySet());
            come.keySet().removeAll(gone.keySet());
            gone.keySet().removeAll(kept);
            gone.forEach((id, part) -> mostAlike(part, come).ifPresent(other -> {
                come.remove(other);
                renames.add(new Rename(what, id, other));
            }));
        }
        return List.copyOf(renames);
    }

    /** The design with the ids of the second one. */
    static Design applied(List<Rename> renames, Design design) {
        Object renamed = design;
        for (Rename rename : renames) {
            renamed = renamed(renamed, "", rename);
        }
        return (Design) Objects.requireNonNull(renamed);
    }

    private static Optional<String> mostAlike(Object part, Map<String, Object> candidates) {
        return candidates.entrySet().stream()
                .filter(candidate -> differences(part, candidate.getValue()) <= MOST_DIFFERENCES)
                .min(Comparator.comparingInt(candidate -> differences(part, candidate.getValue())))
                .map(Map.Entry::getKey);
    }

    private static int differences(Object one, Object other) {
        return Differences.between(one, other, ID).size();
    }

    private static Map<String, Object> parts(NamedPart what, Object design) {
        Map<String, Object> parts = new LinkedHashMap<>();
        collect(what, design, parts);
        return parts;
    }

    private static void collect(NamedPart what, @Nullable Object value, Map<String, Object> parts) {
        if (what.type().isInstance(value)) {
            parts.put(Objects.requireNonNull(Records.key(value)), value);
        } else if (value instanceof List<?> list) {
            list.forEach(element -> collect(what, element, parts));
        } else if (value != null && Records.isTree(value)) {
            Components components = Components.of(value);
            for (int k = 0; k < components.count(); k++) {
                collect(what, components.get(value, k), parts);
            }
        }
    }

    /** The value with the new id where it is the part itself, or refers to it. */
    private static @Nullable Object renamed(@Nullable Object value, String component, Rename rename) {
        if (value instanceof String text) {
            return rename.what().isReference(component) && text.equals(rename.before()) ? rename.after() : text;
        }
        if (value instanceof List<?> list) {
            return list.stream()
                    .map(element -> Objects.requireNonNull(renamed(element, component, rename)))
                    .toList();
        }
        return value != null && Records.isTree(value) ? renamedRecord(value, rename) : value;
    }

    private static Object renamedRecord(Object value, Rename rename) {
        Components components = Components.of(value);
        boolean itself =
                rename.what().type().isInstance(value) && rename.before().equals(Records.key(value));
        Object result = value;
        for (int k = 0; k < components.count(); k++) {
            Object old = components.get(value, k);
            Object next = itself && components.name(k).equals("id")
                    ? rename.after()
                    : renamed(old, components.name(k), rename);
            if (!Objects.equals(old, next)) {
                result = components.with(result, k, next);
            }
        }
        return result;
    }
}
