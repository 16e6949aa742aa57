package io.axiswright.engine.topology;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A greedy layout, improved step by step. Axes left over are found room for in the layout as it is, then in the improved one,
 * whose closed gateways make room; last they are made more urgent and all starts again.
 */
final class GreedySearch {

    private record Attempt(Layout layout, List<Integer> homeless) {}

    private final LayoutModel model;
    private final Surroundings surroundings;
    private final SearchBreadth breadth;
    private final Relays relays;

    GreedySearch(LayoutModel model, Surroundings surroundings, SearchBreadth breadth) {
        this.model = model;
        this.surroundings = surroundings;
        this.breadth = breadth;
        this.relays = new Relays(model);
    }

    /**
     * A layout that connects every axis; null if none was found.
     *
     * @param prices what connecting each axis is worth
     * @param starts how often to start at most
     */
    @Nullable
    Layout layout(long[] prices, int starts) {
        long[] worth = prices.clone();
        long urgency = Math.max(1, Arrays.stream(prices).max().orElse(0) / 2 + dearestGateway());
        for (int start = 0; start < starts; start++) {
            Attempt attempt = completed(worth, new Layout(model.portRate().length));
            if (attempt.homeless().isEmpty()) {
                return attempt.layout();
            }
            attempt.homeless().forEach(axis -> worth[axis] += urgency);
        }
        return null;
    }

    /** A layout completed and improved step by step, so that it changes no more than pays; null if axes are left over. */
    @Nullable
    Layout from(Layout start) {
        Attempt attempt = completed(new long[model.axes().size()], start.copy());
        return attempt.homeless().isEmpty() ? attempt.layout() : null;
    }

    private Attempt completed(long[] worth, Layout start) {
        Layout layout = start;
        List<Integer> homeless = IntStream.range(0, model.axes().size()).boxed().toList();
        int before = Integer.MAX_VALUE;
        while (!homeless.isEmpty() && homeless.size() < before) {
            before = homeless.size();
            new GreedyStart(model, surroundings, relays, breadth, worth, layout).build();
            homeless = new Reinsertion(model, surroundings, breadth, layout).rest();
            layout = new LocalImprovement(model, surroundings, relays, breadth, layout).run();
        }
        return new Attempt(layout, homeless);
    }

    private long dearestGateway() {
        return model.types().stream().mapToLong(LayoutModel.Type::price).max().orElse(0);
    }
}
