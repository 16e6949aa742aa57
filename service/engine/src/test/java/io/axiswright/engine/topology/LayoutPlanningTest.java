package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.finding.Severity;
import java.util.BitSet;
import org.junit.jupiter.api.Test;

/** The layout against every layout there is, on toys small enough to try them all. */
class LayoutPlanningTest {

    private static final int TOYS = 400;

    private final LayoutPlanning planning = new LayoutPlanning();

    @Test
    void noLayoutOfASmallMachineIsCheaper() {
        int built = 0;
        int parted = 0;
        for (long seed = 1; seed <= TOYS; seed++) {
            TopologyRequest request = TopologyRequests.toy(seed);
            double[] cheapest = EveryLayout.cheapest(request);
            TopologyResult result = planning.plan(request);
            if (Double.isInfinite(cheapest[0])) {
                assertThat(result.clash()).as("seed %d", seed).isNotNull();
                if (result.unconnected() != null) {
                    parted++;
                    checkOfTheOthers("seed " + seed, request, result);
                    continue;
                }
                assertThat(result.gateways()).as("seed %d", seed).isEmpty();
                assertThat(result.method()).as("seed %d", seed).isEqualTo(LayoutMethod.NONE);
                assertThat(result.cost()).as("seed %d", seed).isNull();
                assertThat(result.bound()).as("seed %d", seed).isNull();
                assertThat(result.gap()).as("seed %d", seed).isNull();
                assertThat(result.findings())
                        .as("seed %d", seed)
                        .anyMatch(finding -> finding.severity() == Severity.VIOLATION);
                continue;
            }
            built++;
            assertThat(result.method()).as("seed %d", seed).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
            LayoutChecker.checkCheapest("seed " + seed, request, result, cheapest);
        }
        assertThat(built).as("toys that can be built").isBetween(TOYS / 4, TOYS - 20);
        assertThat(parted).as("toys of which only some axes can be reached").isGreaterThan(5);
    }

    /** Of the axes left out none has a layout by itself; of the others none has a cheaper one. */
    private static void checkOfTheOthers(String name, TopologyRequest request, TopologyResult result) {
        var out = new BitSet();
        for (int axis = 0; axis < request.axes().size(); axis++) {
            if (result.unconnectedList().contains(request.axes().get(axis).id())) {
                out.set(axis);
                var others = new BitSet();
                others.set(0, request.axes().size());
                others.clear(axis);
                assertThat(EveryLayout.cheapest(request.without(others))[0])
                        .as(name)
                        .isInfinite();
            }
        }
        TopologyRequest rest = request.without(out);
        assertThat(result.method()).as(name).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
        assertThat(result.findings()).as(name).anyMatch(finding -> finding.severity() == Severity.VIOLATION);
        LayoutChecker.checkCheapest(name, rest, result, EveryLayout.cheapest(rest));
    }

    @Test
    void noLayoutThatRelaysIsCheaper() {
        int relays = 0;
        for (long seed = 1; seed <= 60; seed++) {
            TopologyRequest request = TopologyRequests.farToy(seed);
            double[] cheapest = EveryLayout.cheapest(request);
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest[0]));
            if (result.clash() == null) {
                LayoutChecker.checkCheapest("seed " + seed, request, result, cheapest);
                relays += result.gateways().stream()
                                .anyMatch(gateway -> gateway.spurs().isEmpty())
                        ? 1
                        : 0;
            }
        }
        assertThat(relays).as("layouts with a gateway that only relays").isGreaterThan(5);
    }

    @Test
    void theHeuristicBracketsTheOptimum() {
        int found = 0;
        int built = 0;
        for (long seed = 1; seed <= TOYS; seed++) {
            TopologyRequest request = TopologyRequests.toy(seed);
            double cheapest = EveryLayout.cheapest(request)[0];
            TopologyResult quick = planning.plan(withEffort(request, LayoutEffort.HEURISTIC));
            built += Double.isInfinite(cheapest) ? 0 : 1;
            if (quick.clash() != null) {
                continue;
            }
            found++;
            LayoutChecker.check(request, quick);
            assertThat(requireNonNull(quick.bound()).amount().doubleValue())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(cheapest + 1e-6);
            assertThat(requireNonNull(quick.cost()).amount().doubleValue())
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(cheapest - 1e-6);
        }
        assertThat(found).as("of %d toys that can be built", built).isGreaterThan(built * 9 / 10);
    }

    static TopologyRequest withEffort(TopologyRequest request, LayoutEffort effort) {
        return new TopologyRequest(
                request.network(),
                request.axes(),
                request.gatewayTypes(),
                request.cableAssemblies(),
                request.catalogueSource(),
                request.currency(),
                effort);
    }

    static double cableLength(TopologyResult result) {
        return result.gateways().stream()
                .mapToDouble(gateway -> gateway.linkCableLength().si()
                        + gateway.spurs().stream()
                                .mapToDouble(spur -> spur.cableLength().si())
                                .sum()
                        + gateway.reservedList().stream()
                                .mapToDouble(kept ->
                                        kept.ports() * kept.cableLength().si())
                                .sum())
                .sum();
    }
}
