package io.axiswright.engine.topology;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The smallest set of clashing limits, by duality: every clash meets every set of kinds of limits whose setting aside lets a layout
 * exist. The smallest set that meets those known so far either clashes, and no smaller one does, or shows a further one (A.
 * Ignatiev et al., Smallest MUS extraction with minimal hitting set dualization, CP 2015, from memory). Within the kinds found,
 * single limits are then left out as long as the rest still clashes.
 */
final class ClashSearch {

    private final NamedLimits limits;
    private final WidenedModel widened;
    private final ExistenceCheck check;
    private final List<LimitKind> kinds;
    private final Map<LimitKind, Long> aside = new EnumMap<>(LimitKind.class);
    private final List<Set<LimitKind>> corrections = new ArrayList<>();
    private BitSet clash = new BitSet();
    private ClashProof proof = ClashProof.NONE;

    ClashSearch(NamedLimits limits, WidenedModel widened, ExistenceCheck check) {
        this.limits = limits;
        this.widened = widened;
        this.check = check;
        this.kinds = List.copyOf(limits.kinds());
        kinds.forEach(kind -> aside.put(kind, widened.most(kind)));
    }

    /** Indices of the clashing limits; none if it is not proven that any clash. */
    BitSet clash() {
        return clash;
    }

    ClashProof proof() {
        return proof;
    }

    /** Sets of kinds of limits whose setting aside lets a layout exist, single kinds first. */
    List<Set<LimitKind>> corrections() {
        return corrections;
    }

    void run() {
        if (holding(Set.of()) != Existence.EXISTS) {
            return;
        }
        for (LimitKind kind : kinds) {
            if (holding(without(kinds, kind)) == Existence.EXISTS) {
                corrections.add(EnumSet.of(kind));
            }
        }
        Set<LimitKind> smallest = smallest();
        Set<LimitKind> reduced = smallest == null ? reduced() : smallest;
        if (reduced.isEmpty()) {
            return;
        }
        check.anyOpen();
        clash = MinimalSubset.of(limits.of(reduced), held -> holding(held) == Existence.NONE);
        boolean needed = !check.anyOpen();
        proof = smallest != null && needed
                ? ClashProof.SMALLEST
                : needed ? ClashProof.IRREDUCIBLE : ClashProof.CLASHING;
    }

    /** Kinds that clash, fewer do not; null if the search left it open. */
    private @Nullable Set<LimitKind> smallest() {
        while (true) {
            Set<LimitKind> candidate = smallestMeetingAll();
            switch (holding(candidate)) {
                case NONE -> {
                    return candidate;
                }
                case EXISTS -> corrections.add(grown(candidate));
                case OPEN -> {
                    return null;
                }
            }
            if (corrections.getLast().isEmpty()) {
                return null;
            }
        }
    }

    /** What is left over when as many kinds as possible are held beside those given. */
    private Set<LimitKind> grown(Set<LimitKind> start) {
        Set<LimitKind> held = EnumSet.noneOf(LimitKind.class);
        held.addAll(start);
        for (LimitKind kind : kinds) {
            if (held.add(kind) && holding(held) != Existence.EXISTS) {
                held.remove(kind);
            }
        }
        Set<LimitKind> rest = EnumSet.copyOf(kinds);
        rest.removeAll(held);
        return rest;
    }

    private Set<LimitKind> smallestMeetingAll() {
        for (int size = 0; size <= kinds.size(); size++) {
            for (long set = 0; set < 1L << kinds.size(); set++) {
                if (Long.bitCount(set) == size) {
                    Set<LimitKind> candidate = kinds(set);
                    if (corrections.stream().allMatch(one -> one.stream().anyMatch(candidate::contains))) {
                        return candidate;
                    }
                }
            }
        }
        throw new IllegalStateException("a correction without limits");
    }

    private Set<LimitKind> kinds(long set) {
        Set<LimitKind> chosen = EnumSet.noneOf(LimitKind.class);
        for (int k = 0; k < kinds.size(); k++) {
            if ((set >> k & 1) == 1) {
                chosen.add(kinds.get(k));
            }
        }
        return chosen;
    }

    /** Kinds that clash, as few as single steps lead to; none if it is not proven that any clash. */
    private Set<LimitKind> reduced() {
        Set<LimitKind> held = EnumSet.copyOf(kinds);
        if (holding(held) != Existence.NONE) {
            return Set.of();
        }
        for (LimitKind kind : kinds) {
            Set<LimitKind> rest = without(held, kind);
            if (holding(rest) == Existence.NONE) {
                held = rest;
            }
        }
        return held;
    }

    private static Set<LimitKind> without(Collection<LimitKind> kinds, LimitKind kind) {
        Set<LimitKind> rest = EnumSet.noneOf(LimitKind.class);
        rest.addAll(kinds);
        rest.remove(kind);
        return rest;
    }

    private Existence holding(Set<LimitKind> held) {
        return holding(limits.of(held));
    }

    private Existence holding(BitSet held) {
        return check.of(widened.model(aside, held));
    }
}
