package io.axiswright.engine.topology;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The solver in plain Java that always runs: greedy layouts from several axis prices, improved step by step, against the
 * bound those prices prove.
 */
final class PlainSolver implements LayoutSolver {

    private static final int STARTS = 5;
    private static final int STARTS_IF_LARGE = 2;
    /** Pairs of axis and place from which a machine counts as large. */
    private static final long LARGE = 50_000;

    private static final int REPAIRS = 12;
    private static final int MOST_ROUNDS = 120;
    private static final long WORK = 60_000_000;

    @Override
    public Answer solve(LayoutModel model, @Nullable Layout start) {
        if (model.axes().isEmpty()) {
            return new Answer(new Layout(model.portRate().length), 0, false);
        }
        var bound = new LagrangianBound(model);
        var relays = new Relays(model);
        long pairs = (long) model.axes().size() * model.places();
        int starts = pairs > LARGE ? STARTS_IF_LARGE : STARTS;
        int rounds = rounds(pairs * model.types().size() * starts);
        Layout best =
                better(model, start, greedy(model, relays, new long[model.axes().size()]));
        for (int k = 0; k < starts; k++) {
            long target =
                    best == null ? 2 * bound.value() + 1 : Score.of(model, best).cost();
            if (best != null && bound.value() >= target) {
                break;
            }
            bound.improve(target, rounds);
            best = better(model, best, greedy(model, relays, bound.prices()));
        }
        // Without a layout the target was a guess, but the bound holds all the same.
        return new Answer(best, bound.value(), false);
    }

    @Override
    public boolean solvable(LayoutModel model) {
        return greedy(model, new Relays(model), new long[model.axes().size()]) != null;
    }

    /** Subgradient rounds for each start, fewer where one round is much work; always the same for the same model. */
    private static int rounds(long work) {
        return (int) Math.clamp(WORK / Math.max(1, work), 10, MOST_ROUNDS);
    }

    /** A greedy layout; axes left over are made more urgent and it starts again. */
    private static @Nullable Layout greedy(LayoutModel model, Relays relays, long[] prices) {
        long[] worth = prices.clone();
        long urgency = Math.max(1, java.util.Arrays.stream(prices).max().orElse(0) / 2 + dearestGateway(model));
        for (int repair = 0; repair < REPAIRS; repair++) {
            var greedy = new GreedyStart(model, relays, worth);
            Layout layout = greedy.build();
            List<Integer> leftOver = greedy.leftOver();
            if (leftOver.isEmpty()) {
                return new LocalImprovement(model, relays, layout).run();
            }
            leftOver.forEach(axis -> worth[axis] += urgency);
        }
        return null;
    }

    private static long dearestGateway(LayoutModel model) {
        return model.types().stream().mapToLong(LayoutModel.Type::price).max().orElse(0);
    }

    private static @Nullable Layout better(LayoutModel model, @Nullable Layout best, @Nullable Layout other) {
        if (best == null || other == null) {
            return best == null ? other : best;
        }
        return Score.of(model, other).betterThan(Score.of(model, best)) ? other : best;
    }
}
