package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.Wording;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Axes that share out what another one moves: masses and moments of inertia of the two make up those of the one, and the rest is
 * as good as the same.
 */
final class SharedMasses {

    /** Of the sum; what is stated to two digits adds up no better. */
    private static final double CLOSE = 0.01;

    /** What says nothing of how the axis works, and cannot be the same of both. */
    private static final Set<String> WHEREABOUTS = Set.of("description", "position");

    private SharedMasses() {}

    /** For every one of which exactly one pair can be told: that pair. */
    static List<Sharing> of(Map<String, Members> wholes, Map<String, Members> parts) {
        List<Sharing> sharings = new ArrayList<>();
        wholes.forEach((id, whole) -> {
            List<Sharing> pairs = pairs(id, whole, alike(whole, parts));
            if (pairs.size() == 1) {
                sharings.add(pairs.getFirst());
            }
        });
        return sharings;
    }

    /** Those that are like the one whatever they move. */
    private static Map<String, Members> alike(Members whole, Map<String, Members> parts) {
        Map<String, Members> alike = new LinkedHashMap<>(parts);
        alike.values().removeIf(part -> !alike(whole, part, way -> isMass(whole.get(way))));
        return alike;
    }

    /** At most two, which is one too many already. */
    private static List<Sharing> pairs(String id, Members whole, Map<String, Members> parts) {
        List<Sharing> pairs = new ArrayList<>();
        List<String> ids = List.copyOf(parts.keySet());
        List<Members> members = List.copyOf(parts.values());
        for (int k = 0; k < ids.size(); k++) {
            for (int l = k + 1; l < ids.size(); l++) {
                List<String> shared = shared(whole, members.get(k), members.get(l));
                if (!shared.isEmpty()) {
                    pairs.add(new Sharing(
                            id, List.of(ids.get(k), ids.get(l)), words(shared, whole, members.get(k), members.get(l))));
                }
                if (pairs.size() > 1) {
                    return pairs;
                }
            }
        }
        return pairs;
    }

    /** Ways to what the two share out; none if they do not stand for the one. */
    private static List<String> shared(Members whole, Members one, Members other) {
        List<String> shared = whole.ways().stream()
                .filter(way -> addUp(whole.get(way), one.get(way), other.get(way)))
                .toList();
        boolean stand =
                !shared.isEmpty() && alike(whole, one, shared::contains) && alike(whole, other, shared::contains);
        return stand ? shared : List.of();
    }

    private static boolean alike(Members whole, Members part, Predicate<String> leftOut) {
        return whole.unlike(part, way -> counts(way) && !leftOut.test(way)) <= Renames.MOST_UNLIKE;
    }

    private static boolean addUp(@Nullable Object whole, @Nullable Object one, @Nullable Object other) {
        return isMass(whole)
                && whole instanceof Quantity sum
                && one instanceof Quantity first
                && other instanceof Quantity second
                && first.si() > 0
                && second.si() > 0
                && Math.abs(first.si() + second.si() - sum.si()) <= CLOSE * sum.si();
    }

    private static boolean isMass(@Nullable Object value) {
        return value instanceof Mass || value instanceof Inertia;
    }

    private static boolean counts(String way) {
        return WHEREABOUTS.stream().noneMatch(name -> way.startsWith(":Axis/" + name));
    }

    private static List<String> words(List<String> shared, Members whole, Members one, Members other) {
        return shared.stream()
                .map(way -> name(way) + " " + Wording.of((Quantity) whole.get(way)) + " = "
                        + Wording.of((Quantity) one.get(way)) + " + " + Wording.of((Quantity) other.get(way)))
                .collect(Collectors.collectingAndThen(Collectors.toCollection(LinkedHashSet::new), List::copyOf));
    }

    private static String name(String way) {
        return PlaceWords.of(List.of(new Step.Member(way.substring(way.lastIndexOf('/') + 1))));
    }
}
