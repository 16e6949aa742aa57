package io.axiswright.engine.comparison;

import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.fault.CircuitFault;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.supply.BranchCircuit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Circuits are counted through every study by itself, so the circuit of the same loads may bear another number in the next one.
 * Here they keep the number of the second result: a circuit is the one that feeds the same loads, or, of those left, the one with
 * the most loads in common, each the other's best.
 */
final class CircuitNumbers {

    /** Two that share no load are not the same. */
    private static final double MOST_UNLIKE = 0.99;

    /** Said of a circuit of which there is none in the second result, where its number is another one's. */
    private static final String GONE = " (before)";

    /** Many, and no part of a comparison. */
    private static final String NOT_COMPARED = "derivations";

    private static final Set<String> REFERENCES = Set.of("circuit", "subject");
    private static final Pattern IN_WORDS = Pattern.compile("(?<=[Cc]ircuit )(?:[^ ,;:./]+/)?C\\d+(?![\\w/])");
    private static final Pattern NUMBER = Pattern.compile("(?:.+/)?C\\d+");

    /** Loads of every circuit met, under the number it has here. */
    private final Map<String, Set<String>> known;

    private final SequencedMap<String, String> renumbered = new LinkedHashMap<>();

    /** With the numbers of the second result; then those of the first that have no counterpart. */
    CircuitNumbers(StudyResult second) {
        known = loads(second);
    }

    /** The first result, with the second one's numbers; what has none there is remembered for what is named later. */
    StudyResult first(StudyResult result) {
        Map<String, String> names = names(result);
        names.forEach((number, name) -> {
            if (known.containsKey(name) && !number.equals(name)) {
                renumbered.put(number, name);
            }
        });
        Map<String, Set<String>> own = loads(result);
        own.forEach((number, loads) -> known.putIfAbsent(names.getOrDefault(number, number), loads));
        return named(result, names);
    }

    /** Any other result, with the same numbers. */
    StudyResult named(StudyResult result) {
        return named(result, names(result));
    }

    /** What the first result calls them, and what they are called here, where that is not the same. */
    SequencedMap<String, String> renumbered() {
        return renumbered;
    }

    private static StudyResult named(StudyResult result, Map<String, String> names) {
        return names.isEmpty() ? result : (StudyResult) record(result, names);
    }

    /** New names by old ones; empty if all stay. An axis that is called like a circuit leaves no telling of which is meant. */
    private Map<String, String> names(StudyResult result) {
        Map<String, Set<String>> own = loads(result);
        Map<String, String> names = new HashMap<>();
        Map<String, Set<String>> rest = new LinkedHashMap<>(known);
        Map<Set<String>, String> byLoads = new HashMap<>();
        known.forEach((name, loads) -> byLoads.putIfAbsent(loads, name));
        Map<String, Set<String>> unlike = new LinkedHashMap<>();
        own.forEach((number, loads) -> {
            String name = byLoads.get(loads);
            if (name != null && rest.remove(name) != null) {
                names.put(number, name);
            } else {
                unlike.put(number, loads);
            }
        });
        names.putAll(MutualBest.of(unlike, rest, CircuitNumbers::unlike, MOST_UNLIKE));
        Set<String> taken = new HashSet<>(known.keySet());
        own.keySet().forEach(number -> names.computeIfAbsent(number, old -> free(old, taken)));
        boolean same = names.entrySet().stream().allMatch(e -> e.getKey().equals(e.getValue()));
        return same || result.duty().axes().stream().map(AxisDuty::axis).anyMatch(NUMBER.asMatchPredicate())
                ? Map.of()
                : names;
    }

    private static String free(String number, Set<String> taken) {
        String name = number;
        while (!taken.add(name)) {
            name += GONE;
        }
        return name;
    }

    private static double unlike(Set<String> one, Set<String> other) {
        long common = one.stream().filter(other::contains).count();
        return 1 - (double) common / (one.size() + other.size() - common);
    }

    private static Map<String, Set<String>> loads(StudyResult result) {
        Map<String, Set<String>> loads = new LinkedHashMap<>();
        result.supply().circuits().forEach(circuit -> loads.put(circuit.id(), Set.copyOf(circuit.loads())));
        return loads;
    }

    private static Object record(Object owner, Map<String, String> names) {
        Components components = Components.of(owner);
        Object result = owner;
        for (int k = 0; k < components.count(); k++) {
            Object old = components.get(owner, k);
            String name = components.name(k);
            Object next = name.equals(NOT_COMPARED) ? old : value(owner, name, old, names);
            if (old != next) {
                result = components.with(result, k, next);
            }
        }
        return result;
    }

    private static @Nullable Object value(
            Object owner, String component, @Nullable Object value, Map<String, String> names) {
        return switch (value) {
            case String text -> text(owner, component, text, names);
            case List<?> list -> list(owner, component, list, names);
            case Record inner when Records.isTree(inner) -> record(inner, names);
            case null, default -> value;
        };
    }

    /** The very list if nothing in it changes. */
    private static Object list(Object owner, String component, List<?> list, Map<String, String> names) {
        List<@Nullable Object> next = new ArrayList<>(list.size());
        boolean changed = false;
        for (Object element : list) {
            Object renamed = value(owner, component, element, names);
            changed |= renamed != element;
            next.add(renamed);
        }
        return changed ? next : list;
    }

    private static String text(Object owner, String component, String text, Map<String, String> names) {
        boolean whole = REFERENCES.contains(component) || component.equals("id") && isCircuit(owner);
        if (whole && names.containsKey(text)) {
            return names.getOrDefault(text, text);
        }
        Matcher matcher = IN_WORDS.matcher(text);
        return matcher.find()
                ? matcher.replaceAll(
                        found -> Matcher.quoteReplacement(names.getOrDefault(found.group(), found.group())))
                : text;
    }

    private static boolean isCircuit(Object owner) {
        return owner instanceof BranchCircuit || owner instanceof CircuitConductors || owner instanceof CircuitFault;
    }
}
