package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.TrunkPricing.Cheapest;
import io.axiswright.engine.topology.TrunkPricing.Worth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The cheapest routes against every order of every choice of places. */
class TrunkPricingTest {

    private static final int PLACES = 5;
    private static final int DEEPEST = 4;

    private static LayoutModel model(SplittableRandom random) {
        return new LayoutModel(
                List.of(),
                List.of(new LayoutModel.Type(100, 4, DEEPEST, 0, StopScope.NONE)),
                random.ints(PLACES, 0, 3).toArray(),
                new long[] {1},
                links(1, random),
                links(PLACES, random),
                new LinkTable(new long[0][], new long[0][]));
    }

    private static LinkTable links(int rows, SplittableRandom random) {
        var cost = new long[rows][PLACES];
        var length = new long[rows][PLACES];
        for (int row = 0; row < rows; row++) {
            for (int place = 0; place < PLACES; place++) {
                cost[row][place] = random.nextInt(6) == 0 ? LinkTable.FAR : 5 * random.nextInt(1, 9);
                length[row][place] = random.nextInt(1, 100);
            }
        }
        return new LinkTable(cost, length);
    }

    private static Worth worth(SplittableRandom random) {
        var place = new double[DEEPEST + 1][PLACES];
        for (double[] row : place) {
            Arrays.setAll(row, k -> random.nextDouble(40));
        }
        return new Worth(random.nextDouble(10), place);
    }

    private static void every(
            LayoutModel model, int[] path, int at, Score links, Map<TrunkRoute.Stops, TrunkRoute> found) {
        if (at > 0) {
            var route = new TrunkRoute(Arrays.copyOf(path, at), links);
            found.merge(route.stops(), route, (one, other) -> other.links().betterThan(one.links()) ? other : one);
        }
        for (int to = 0; to < PLACES && at < DEEPEST; to++) {
            int place = to;
            LinkTable table = at == 0 ? model.host() : model.trunk();
            int from = at == 0 ? 0 : path[at - 1];
            if (table.reaches(from, to)
                    && Arrays.stream(path, 0, at).filter(stop -> stop == place).count() < model.room()[to]) {
                path[at] = to;
                every(
                        model,
                        path,
                        at + 1,
                        links.plus(new Score(table.cost()[from][to], table.length()[from][to])),
                        found);
            }
        }
    }

    private static double beyond(TrunkRoute route, Worth worth) {
        return route.links().cost()
                - worth.trunk()
                - Arrays.stream(route.places())
                        .mapToDouble(place -> worth.place()[route.depth()][place])
                        .sum();
    }

    @Test
    void agreesWithEveryRoute() {
        var random = new SplittableRandom(415);
        int full = 0;
        for (int k = 0; k < 400; k++) {
            LayoutModel model = model(random);
            Worth worth = worth(random);
            Map<TrunkRoute.Stops, TrunkRoute> every = new HashMap<>();
            every(model, new int[DEEPEST], 0, Score.ZERO, every);
            double limit = random.nextDouble(-40, 60);
            int most = random.nextInt(1, 60);

            Cheapest cheapest = requireNonNull(new TrunkPricing(model).cheapest(worth, limit, most));

            List<TrunkRoute> expected = new ArrayList<>(every.values());
            expected.removeIf(route -> beyond(route, worth) >= limit);
            expected.sort(Comparator.comparingDouble(route -> beyond(route, worth)));
            int count = Math.min(most, expected.size());
            assertThat(cheapest.routes()).hasSize(count);
            for (int one = 0; one < count; one++) {
                TrunkRoute found = cheapest.routes().get(one);
                assertThat(beyond(found, worth)).isCloseTo(beyond(expected.get(one), worth), within(1e-9));
                assertThat(found.links())
                        .isEqualTo(requireNonNull(every.get(found.stops())).links());
            }
            if (expected.size() > most) {
                full++;
                assertThat(cheapest.below()).isCloseTo(beyond(expected.get(most), worth), within(1e-9));
            } else {
                assertThat(cheapest.below()).isEqualTo(limit);
            }
        }
        assertThat(full).isPositive();
    }
}
