package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Layouts kept for requests much like the one they were found for, against every layout there is of those. */
class LayoutMemoryTest {

    private static final int TOYS = 600;

    /** Says how often anything was searched. */
    private static final class Counting implements LayoutSolver {
        private final LayoutSolver solver = new ExactSolver(2, SearchGate.open());
        int searches;

        @Override
        public Answer solve(LayoutModel model, @org.jspecify.annotations.Nullable Layout start) {
            searches++;
            return solver.solve(model, start);
        }

        @Override
        public Existence existence(LayoutModel model, WorkBudget budget) {
            searches++;
            return solver.existence(model, budget);
        }
    }

    /** One thing of it is otherwise: where an axis stands, or what a cable or a gateway costs. */
    private static TopologyRequest changed(TopologyRequest request, SplittableRandom random) {
        TopologyRequests copy = TopologyRequests.copy(request);
        switch (random.nextInt(4)) {
            case 0, 1 -> {
                int k = random.nextInt(copy.axes.size());
                copy.axes.set(
                        k,
                        Copies.with(
                                copy.axes.get(k),
                                "position",
                                TopologyRequests.at(random.nextInt(13), random.nextInt(4))));
            }
            case 2 -> {
                if (!copy.cables.isEmpty()) {
                    int k = random.nextInt(copy.cables.size());
                    CableAssembly cable = copy.cables.get(k);
                    copy.cables.set(k, Copies.with(cable, "price", moved(cable.price(), random)));
                }
            }
            default -> {
                int k = random.nextInt(copy.types.size());
                GatewayType type = copy.types.get(k);
                copy.types.set(k, Copies.with(type, "price", moved(type.price(), random)));
            }
        }
        return copy.build();
    }

    private static Money moved(@org.jspecify.annotations.Nullable Money price, SplittableRandom random) {
        BigDecimal more = BigDecimal.valueOf(random.nextInt(-5, 20));
        return new Money(requireNonNull(price).amount().add(more).max(BigDecimal.ZERO), "EUR");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void aLayoutKeptWithoutSearchIsTheCheapest(long half) {
        var random = new SplittableRandom(77 + half);
        int kept = 0;
        int searched = 0;
        for (long seed = half; seed <= TOYS; seed += 2) {
            TopologyRequest request = TopologyRequests.toy(seed);
            var solver = new Counting();
            var memory = new LayoutMemory(new LayoutPlanning(solver));
            TopologyResult known = memory.plan(request);
            TopologyRequest other = changed(request, random);
            int before = solver.searches;
            TopologyResult result = memory.plan(other, request);
            double[] cheapest = EveryLayout.cheapest(other);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest[0]));
            if (result.clash() != null) {
                continue;
            }
            if (solver.searches > before) {
                searched++;
            } else if (known.clash() == null) {
                kept++;
            }
            assertThat(result.method()).as("seed %d", seed).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
            LayoutChecker.checkCheapest("seed " + seed, other, result, cheapest);
        }
        assertThat(kept).as("layouts kept").isGreaterThan(40);
        assertThat(searched).as("layouts sought anew").isGreaterThan(20);
    }

    /** With no exact search most toys have a gap; it stays what it was, and the bound stays one. */
    @Test
    void whatWasNotProvenIsNotProvenByKeepingIt() {
        var random = new SplittableRandom(80);
        int open = 0;
        for (long seed = 1; seed <= TOYS; seed++) {
            TopologyRequests toy = TopologyRequests.copy(TopologyRequests.toy(seed));
            toy.searchLimit = new Time(0);
            TopologyRequest request = toy.build();
            TopologyRequests moved = TopologyRequests.copy(changed(request, random));
            moved.searchLimit = new Time(0);
            TopologyRequest other = moved.build();
            var planning = new LayoutPlanning();
            Planned known = planning.planned(request, java.util.List.of());
            LayoutSolver.Answer carried = CarriedLayout.to(known, LayoutProblem.of(other));
            if (carried == null) {
                continue;
            }
            TopologyResult result =
                    planning.planned(other, java.util.List.of(known)).result();
            double cost = requireNonNull(result.cost()).amount().doubleValue();
            double bound = requireNonNull(result.bound()).amount().doubleValue();
            double gap = requireNonNull(known.result().cost()).amount().doubleValue()
                    - requireNonNull(known.result().bound()).amount().doubleValue();
            assertThat(cost - bound).as("seed %d", seed).isCloseTo(gap, within(1e-6));
            assertThat(bound).as("seed %d", seed).isLessThanOrEqualTo(EveryLayout.cheapest(other)[0] + 1e-6);
            open += gap > 0 ? 1 : 0;
        }
        assertThat(open).as("layouts kept with a gap").isGreaterThan(20);
    }

    @Test
    void theSameRequestIsPlannedOnce() {
        var solver = new Counting();
        var memory = new LayoutMemory(new LayoutPlanning(solver));
        TopologyRequest request = TopologyRequests.machine(16, 5, 4, 1).build();
        TopologyResult first = memory.plan(request);
        int searches = solver.searches;
        assertThat(searches).isPositive();
        assertThat(memory.plan(request)).isSameAs(first);
        assertThat(memory.plan(request, request)).isSameAs(first);
        assertThat(solver.searches).isEqualTo(searches);
    }
}
