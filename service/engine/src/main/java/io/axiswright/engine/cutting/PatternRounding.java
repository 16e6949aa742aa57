package io.axiswright.engine.cutting;

import io.axiswright.engine.cutting.PatternRelaxation.Use;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Whole numbers from the relaxation, step by step: the whole part of each use is cut, the most used pattern once where there is
 * none, and the relaxation of what is left decides the next step (sequential rounding, diving).
 */
final class PatternRounding {

    /** What a use may lack of a whole number by rounding and by the shift of the relaxation. */
    private static final double ROUNDING = 1e-3;

    private final Kinds kinds;
    private final PatternRelaxation relaxation;
    private final int[] left;
    private final List<List<Integer>> patterns = new ArrayList<>();

    PatternRounding(Kinds kinds, PatternRelaxation relaxation) {
        this.kinds = kinds;
        this.relaxation = relaxation;
        this.left = kinds.counts.clone();
    }

    /** Patterns that cut just the pieces wanted. */
    List<List<Integer>> patterns() {
        while (Arrays.stream(left).anyMatch(count -> count > 0)) {
            List<Use> uses = relaxation.solve(left, Integer.MAX_VALUE).uses();
            int before = patterns.size();
            uses.forEach(use -> cut(use.pattern(), (int) Math.floor(use.times() + ROUNDING)));
            if (patterns.size() == before) {
                uses.stream().max(Comparator.comparingDouble(Use::times)).ifPresent(use -> cut(use.pattern(), 1));
            }
            if (patterns.size() == before) {
                patterns.addAll(BestFit.patterns(kinds, left));
                break;
            }
        }
        return List.copyOf(patterns);
    }

    private void cut(List<Integer> pattern, int times) {
        for (int k = 0; k < times && PatternRelaxation.fits(pattern, left); k++) {
            patterns.add(pattern);
            for (int kind = 0; kind < left.length; kind++) {
                left[kind] -= pattern.get(kind);
            }
        }
    }
}
