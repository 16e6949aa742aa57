package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Current;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which lines every circuit uses.
 *
 * @param mains what the mains offer
 * @param groups the circuits
 * @param masks the lines of each circuit, bit 0 for L1
 * @param answer how the one-phase circuits were placed
 */
record LinePlacing(MainsLines mains, List<LoadGroup> groups, List<Integer> masks, PhaseBalancing.Answer answer) {

    private static final double MICRO = 1e-6;

    /**
     * Puts the one-phase circuits on the lines; the others load all lines alike and do not matter for it. Circuits whose
     * loads share a DC bus go on the same lines.
     */
    static LinePlacing of(MainsLines mains, List<LoadGroup> groups) {
        var blocks = CircuitBlock.of(groups);
        var answer = PhaseBalancing.of(
                mains.lines().size(), blocks.stream().map(b -> ask(b, groups)).toList());
        var masks = new ArrayList<Integer>(Collections.nCopies(groups.size(), mains.all()));
        for (int b = 0; b < blocks.size(); b++) {
            for (int circuit : blocks.get(b).circuits()) {
                masks.set(circuit, answer.masks().get(b));
            }
        }
        return new LinePlacing(mains, groups, List.copyOf(masks), answer);
    }

    private static PhaseBalancing.Ask ask(CircuitBlock block, List<LoadGroup> groups) {
        double current = block.circuits().stream()
                .mapToDouble(k -> DesignCurrents.sum(groups.get(k).loads()))
                .sum();
        return new PhaseBalancing.Ask(
                Math.round(current / MICRO), block.connection().lines());
    }

    /** The names of a circuit's lines. */
    List<String> linesOf(int circuit) {
        return mains.named(masks.get(circuit));
    }

    Balance balance() {
        int n = mains.lines().size();
        var rated = new double[n];
        var thermal = new double[n];
        for (int k = 0; k < groups.size(); k++) {
            for (int l = 0; l < n; l++) {
                if ((masks.get(k) & 1 << l) != 0) {
                    rated[l] += DesignCurrents.sum(groups.get(k).loads());
                    thermal[l] += groups.get(k).loads().stream()
                            .mapToDouble(load -> load.thermalCurrent().si())
                            .sum();
                }
            }
        }
        double most = Arrays.stream(rated).max().orElse(0);
        double least = Arrays.stream(rated).min().orElse(0);
        double mean = Arrays.stream(rated).average().orElse(0);
        // all on one line is the worst there is; rounding must not make it worse
        double unbalance = mean == 0 ? 0 : Math.min(n - 1, Math.max(most - mean, mean - least) / mean);
        double aboveBound = (answer.heaviest() - answer.bound()) * MICRO;
        return new Balance(
                IntStream.range(0, n)
                        .mapToObj(l ->
                                new LineLoading(mains.lines().get(l), new Current(rated[l]), new Current(thermal[l])))
                        .toList(),
                new Current(most),
                new Current(most - aboveBound),
                new Current(most - least),
                unbalance,
                answer.proven());
    }
}
