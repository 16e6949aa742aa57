package io.axiswright.engine.comparison;

import io.axiswright.engine.graph.Components;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Parts that share out what refers to another one: whatever named the one names one of the two, each of them is named, and by
 * nothing else that was there before.
 */
final class SharedReferences {

    private SharedReferences() {}

    /**
     * For every one in whose place two of the other design stand: those.
     *
     * @param what which kind of part
     * @param wholes ids of parts that stand in the one design only
     * @param whole the one design
     * @param parts ids of parts that stand in the other design only, in its order
     * @param divided the other design
     */
    static List<Sharing> of(NamedPart what, Set<String> wholes, Object whole, Set<String> parts, Object divided) {
        if (wholes.isEmpty() || parts.size() < 2) {
            return List.of();
        }
        Map<List<Step>, String> before = references(what, whole);
        Map<List<Step>, String> after = references(what, divided);
        before.keySet().retainAll(after.keySet());
        Map<String, Set<String>> successors = new LinkedHashMap<>();
        Map<String, Set<String>> predecessors = new LinkedHashMap<>();
        before.forEach((place, old) -> {
            String now = after.get(place);
            successors.computeIfAbsent(old, _ -> new LinkedHashSet<>()).add(now);
            predecessors.computeIfAbsent(now, _ -> new LinkedHashSet<>()).add(old);
        });
        List<Sharing> sharings = new ArrayList<>();
        for (String one : wholes) {
            Set<String> now = successors.getOrDefault(one, Set.of());
            if (now.size() == 2
                    && parts.containsAll(now)
                    && now.stream()
                            .allMatch(id ->
                                    predecessors.getOrDefault(id, Set.of()).size() == 1)) {
                List<String> two = parts.stream().filter(now::contains).toList();
                sharings.add(new Sharing(one, two, words(one, two, before, after)));
            }
        }
        return sharings;
    }

    private static List<String> words(
            String one, List<String> two, Map<List<Step>, String> before, Map<List<Step>, String> after) {
        List<String> words = new ArrayList<>();
        for (String part : two) {
            List<String> places = before.entrySet().stream()
                    .filter(entry -> entry.getValue().equals(one) && part.equals(after.get(entry.getKey())))
                    .map(entry -> PlaceWords.of(entry.getKey()))
                    .toList();
            words.add(part + " stands for " + one + " as " + String.join(", ", places));
        }
        return words;
    }

    /** Where a design names parts of a kind, each once, with the id that stands there. */
    private static Map<List<Step>, String> references(NamedPart what, Object design) {
        Map<List<Step>, String> references = new LinkedHashMap<>();
        collect(what, design, List.of(), references);
        return references;
    }

    private static void collect(
            NamedPart what, @Nullable Object value, List<Step> path, Map<List<Step>, String> references) {
        if (value instanceof List<?> list) {
            // an element's place moves between revisions, so it is named by its key alone
            Records.keyed(list)
                    .forEach(
                            (key, element) -> collect(what, element, then(path, new Step.Element(key, 0)), references));
        } else if (value instanceof String id
                && path.getLast() instanceof Step.Member(String name)
                && what.isReference(name)) {
            references.put(path, id);
        } else if (value != null && Records.isTree(value)) {
            Components components = Components.of(value);
            for (int k = 0; k < components.count(); k++) {
                collect(what, components.get(value, k), then(path, new Step.Member(components.name(k))), references);
            }
        }
    }

    private static List<Step> then(List<Step> path, Step step) {
        List<Step> longer = new ArrayList<>(path);
        longer.add(step);
        return List.copyOf(longer);
    }
}
