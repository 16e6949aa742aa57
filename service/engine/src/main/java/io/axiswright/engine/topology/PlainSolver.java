package io.axiswright.engine.topology;

import org.jspecify.annotations.Nullable;

/**
 * The solver in plain Java that always runs: greedy layouts from several axis prices, improved step by step, against the
 * bound those prices prove.
 */
final class PlainSolver implements LayoutSolver {

    private static final int STARTS_IF_LARGE = 2;
    /** Pairs of axis and place from which a machine counts as large. */
    private static final long LARGE = 50_000;

    /** Greedy starts until there is a layout at all. */
    private static final int RESTARTS = 12;

    private static final int MOST_ROUNDS = 60;
    private static final long WORK = 60_000_000;

    private final SearchBreadth breadth;

    PlainSolver(SearchBreadth breadth) {
        this.breadth = breadth;
    }

    @Override
    public Answer solve(LayoutModel model, @Nullable Layout start) {
        if (model.axes().isEmpty()) {
            return new Answer(new Layout(model.portRate().length), 0, false);
        }
        var surroundings = new Surroundings(model);
        var search = new GreedySearch(model, surroundings, breadth);
        var bound = new LagrangianBound(model, surroundings);
        long pairs = (long) model.axes().size() * model.places();
        int starts = pairs > LARGE ? Math.min(STARTS_IF_LARGE, breadth.starts()) : breadth.starts();
        int rounds = rounds(pairs * model.types().size() * starts);
        Layout kept = start == null ? null : model.within(search.from(start));
        Layout best = Score.better(
                model, kept, model.within(search.layout(new long[model.axes().size()], RESTARTS)));
        if (best == null && model.limitsGateways()) {
            best = model.within(new GreedySearch(model.withDearGateways(), surroundings, breadth)
                    .layout(new long[model.axes().size()], RESTARTS));
        }
        for (int k = 0; k < starts; k++) {
            long target =
                    best == null ? 2 * bound.value() + 1 : Score.of(model, best).cost();
            if (best != null && bound.value() >= target) {
                break;
            }
            bound.improve(target, rounds);
            best = Score.better(model, best, model.within(search.layout(bound.prices(), best == null ? RESTARTS : 1)));
        }
        // Without a layout the target was a guess, but the bound holds all the same.
        return new Answer(best, bound.value(), false);
    }

    @Override
    public Existence existence(LayoutModel model, WorkBudget budget) {
        Layout found = model.within(new GreedySearch(model, new Surroundings(model), breadth)
                .layout(new long[model.axes().size()], RESTARTS));
        return found == null ? Existence.OPEN : Existence.EXISTS;
    }

    /** Subgradient rounds for each start, fewer where one round is much work; always the same for the same model. */
    private static int rounds(long work) {
        return (int) Math.clamp(WORK / Math.max(1, work), 10, MOST_ROUNDS);
    }
}
