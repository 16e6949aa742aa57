package io.axiswright.engine.comparison;

import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.fault.CircuitFault;
import io.axiswright.engine.memory.Memory;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.topology.SpurLink;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Circuits and gateways are counted through every study by itself, so what is the same one may bear another number in the next.
 * Here they keep the number of the second result: a circuit is the one that feeds the same loads, a gateway the one with the
 * same axes at the same place, or, of those left, the one with the most of them in common, each the other's best.
 */
final class CountedParts {

    /** What is counted. */
    private enum Kind {
        CIRCUIT("(?:.+/)?C\\d+") {
            @Override
            Map<String, Set<String>> parts(StudyResult result) {
                Map<String, Set<String>> loads = new LinkedHashMap<>();
                result.supply().circuits().forEach(circuit -> loads.put(circuit.id(), Set.copyOf(circuit.loads())));
                return loads;
            }
        },
        GATEWAY("G\\d+") {
            @Override
            Map<String, Set<String>> parts(StudyResult result) {
                Map<String, Set<String>> gateways = new LinkedHashMap<>();
                for (PlacedGateway gateway : result.topology().gateways()) {
                    Set<String> told =
                            gateway.spurs().stream().map(SpurLink::axis).collect(Collectors.toSet());
                    // no id of an axis, which has no blank at its front
                    told.add(" " + gateway.place());
                    gateways.put(gateway.id(), told);
                }
                return gateways;
            }
        };

        private final Predicate<String> number;

        Kind(String number) {
            this.number = Pattern.compile(number).asMatchPredicate();
        }

        /** By their numbers what tells them. */
        abstract Map<String, Set<String>> parts(StudyResult result);
    }

    /** Two that have nothing in common are not the same. */
    private static final double MOST_UNLIKE = 0.99;

    /** Said of one that is not in the second result, where its number is another one's there. */
    private static final String GONE = " (before)";

    /** Many, and no part of a comparison. */
    private static final Set<String> NOT_COMPARED = Set.of("derivations");

    private static final Set<String> REFERENCES = Set.of("circuit", "subject", "upstream", "feedPoint", "node");
    private static final Pattern IN_WORDS =
            Pattern.compile("(?<=[Cc]ircuit )(?:[^ ,;:./]+/)?C\\d+(?![\\w/])|(?<=[Gg]ateway )G\\d+(?![\\w/])");

    /** What tells every one met, under the number it has here. */
    private final Map<Kind, Map<String, Set<String>>> known = new EnumMap<>(Kind.class);

    private final SequencedMap<String, String> renumbered = new LinkedHashMap<>();

    /** Results that call them alike are renamed alike. */
    private final Memory memory = new Memory();

    /** New names by old ones. */
    private record Names(Map<String, String> names) {}

    /** With the numbers of the second result; then those of the first that have no counterpart. */
    CountedParts(StudyResult second) {
        for (Kind kind : Kind.values()) {
            known.put(kind, new LinkedHashMap<>(kind.parts(second)));
        }
    }

    /** The first result, with the second one's numbers; what has none there is remembered for what is named later. */
    StudyResult first(StudyResult result) {
        Map<String, String> names = names(result);
        known.forEach((kind, parts) -> kind.parts(result).forEach((number, told) -> {
            String name = names.getOrDefault(number, number);
            if (parts.putIfAbsent(name, told) != null && !name.equals(number)) {
                renumbered.put(number, name);
            }
        }));
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

    private StudyResult named(StudyResult result, Map<String, String> names) {
        return names.isEmpty()
                ? result
                : (StudyResult) memory.recall(TextReplacement.class, new Names(names), CountedParts::replacement)
                        .in(result);
    }

    private static TextReplacement replacement(Names names) {
        return new TextReplacement(
                (owner, component, text) -> text(owner, component, text, names.names()), NOT_COMPARED);
    }

    /** New names by old ones; empty if all stay. */
    private Map<String, String> names(StudyResult result) {
        Map<String, String> names = new HashMap<>();
        known.forEach((kind, parts) -> {
            // an axis that is called like one leaves no telling of which is meant
            if (result.duty().axes().stream().map(AxisDuty::axis).noneMatch(kind.number)) {
                names.putAll(names(kind.parts(result), parts));
            }
        });
        return names.entrySet().stream().allMatch(e -> e.getKey().equals(e.getValue())) ? Map.of() : names;
    }

    private static Map<String, String> names(Map<String, Set<String>> own, Map<String, Set<String>> known) {
        Map<String, String> names = new HashMap<>();
        Map<String, Set<String>> rest = new LinkedHashMap<>(known);
        Map<Set<String>, String> byMembers = new HashMap<>();
        known.forEach((name, told) -> byMembers.putIfAbsent(told, name));
        Map<String, Set<String>> unlike = new LinkedHashMap<>();
        own.forEach((number, told) -> {
            String name = byMembers.get(told);
            if (name != null && rest.remove(name) != null) {
                names.put(number, name);
            } else {
                unlike.put(number, told);
            }
        });
        names.putAll(MutualBest.of(unlike, rest, CountedParts::unlike, MOST_UNLIKE));
        Set<String> taken = new HashSet<>(known.keySet());
        own.keySet().forEach(number -> names.computeIfAbsent(number, old -> free(old, taken)));
        return names;
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

    private static String text(Object owner, String component, String text, Map<String, String> names) {
        boolean whole = REFERENCES.contains(component) || component.equals("id") && isCounted(owner);
        if (whole && names.containsKey(text)) {
            return names.getOrDefault(text, text);
        }
        if (!text.contains("ircuit ") && !text.contains("ateway ")) {
            return text; // most texts, and looking for the pattern takes much longer
        }
        Matcher matcher = IN_WORDS.matcher(text);
        return matcher.find()
                ? matcher.replaceAll(
                        found -> Matcher.quoteReplacement(names.getOrDefault(found.group(), found.group())))
                : text;
    }

    private static boolean isCounted(Object owner) {
        return owner instanceof PlacedGateway
                || owner instanceof BranchCircuit
                || owner instanceof CircuitConductors
                || owner instanceof CircuitFault;
    }
}
