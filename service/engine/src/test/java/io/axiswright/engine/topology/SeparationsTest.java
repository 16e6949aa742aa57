package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Axes that must not or had better not share a gateway: against every layout there is. */
class SeparationsTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    /** Three axes by one place for two gateways of four ports, all cables of 10 m. */
    private static TopologyRequests three() {
        return new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.TRUNK, 10, 7)
                .cable(CableUse.SPUR, 10, 4)
                .port(5000)
                .place(0, 0, 2)
                .type(50, 4, 2, 1, StopScope.NONE)
                .axis(1)
                .axis(2)
                .axis(3);
    }

    private static TopologyRequest toy(long seed) {
        TopologyRequests toy = TopologyRequests.copy(TopologyRequests.toy(seed));
        var random = new SplittableRandom(seed);
        if (toy.axes.size() < 4 && random.nextBoolean()) {
            toy.reserve(1 + random.nextInt(2), random.nextInt(13), 500);
        }
        for (int k = 0; k < 1 + random.nextInt(3); k++) {
            List<String> axes = new ArrayList<>();
            toy.axes.forEach(axis -> {
                if (random.nextInt(3) > 0) {
                    axes.add(axis.id());
                }
            });
            if (!toy.reserved.isEmpty() && random.nextBoolean()) {
                axes.add("R1");
            }
            if (!axes.isEmpty()) {
                toy.apart(random.nextInt(2) == 0 ? -1 : random.nextInt(60), axes.toArray(new String[0]));
            }
        }
        return toy.build();
    }

    @Test
    void noLayoutThatKeepsThemApartIsCheaper() {
        int built = 0;
        int paid = 0;
        int found = 0;
        for (long seed = 1; seed <= 400; seed++) {
            TopologyRequest request = toy(seed);
            double[] cheapest = EveryLayout.cheapest(request);
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest[0]));
            if (result.clash() != null) {
                continue;
            }
            built++;
            LayoutChecker.check(request, result);
            assertThat(result.method()).as("seed %d", seed).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
            assertThat(requireNonNull(result.bound()).amount().doubleValue())
                    .as("seed %d", seed)
                    .isCloseTo(cheapest[0], within(1e-6));
            assertThat(LayoutPlanningTest.cableLength(result))
                    .as("seed %d", seed)
                    .isCloseTo(cheapest[1], within(1e-6));
            paid += result.separationCost() != null
                            && result.separationCost().amount().signum() > 0
                    ? 1
                    : 0;
            TopologyResult quick = planning.plan(LayoutPlanningTest.withEffort(request, LayoutEffort.HEURISTIC));
            if (quick.clash() == null) {
                found++;
                LayoutChecker.check(request, quick);
                assertThat(requireNonNull(quick.bound()).amount().doubleValue())
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(cheapest[0] + 1e-6);
            }
        }
        assertThat(built).as("toys that can be built").isGreaterThan(100);
        assertThat(paid).as("layouts in which sharing pays").isGreaterThan(20);
        assertThat(found).as("found by the heuristic of %d", built).isGreaterThan(built * 9 / 10);
    }

    /** One gateway serves all three for 50 + 5 + 3 · 4 = 67; kept apart from one axis, a second with its trunk cable adds 57. */
    @Test
    void aWishIsMetForItsPriceAndNoMore() {
        for (var wish : List.of(List.of("56", "67", "56"), List.of("58", "124", "0"))) {
            TopologyRequests request = three().apart(Double.parseDouble(wish.getFirst()), "A1", "A3");

            TopologyResult result = planning.plan(request.build());

            assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo(wish.get(1));
            assertThat(requireNonNull(result.separationCost()).amount()).isEqualByComparingTo(wish.get(2));
            assertThat(result.findings())
                    .extracting(Finding::code)
                    .isEqualTo(wish.get(2).equals("0") ? List.of() : List.of(FindingCode.TOPOLOGY_SEPARATION_UNMET));
        }
    }

    @Test
    void whatMustBeKeptApartIs() {
        TopologyResult result = planning.plan(three().apart(-1, "A1", "A3").build());

        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo("124");
        assertThat(result.separationCost()).isNull();
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void moreAxesApartThanGateways() {
        Finding finding = planning.plan(three().apart(-1, "A1", "A2", "A3").build())
                .findings()
                .getFirst();

        assertThat(finding.code()).isEqualTo(FindingCode.TOPOLOGY_SEPARATION_NEEDS_GATEWAYS);
        assertThat(finding.text()).contains("S1", "3 gateways", "2");
        assertThat(finding.pointer()).isEqualTo("/design/network/separations/0");
    }

    /** Each pair is kept apart by itself: three gateways are needed, though no separation has more than two axes. */
    @Test
    void separationsThatOnlyTogetherAskTooMuch() {
        TopologyRequests request =
                three().apart(-1, "A1", "A2").apart(-1, "A2", "A3").apart(-1, "A1", "A3");

        assertThat(planning.plan(request.build()).findings())
                .filteredOn(finding -> finding.code() == FindingCode.TOPOLOGY_LIMITS_CLASH)
                .extracting(Finding::text)
                .anySatisfy(text -> assertThat(text).contains("3 separations of axes", "with 2"));
    }

    @Test
    void aPriceInAnotherCurrencyIsRefused() {
        TopologyRequests request = three().apart(5, "A1", "A2");
        request.separations.set(
                0, Copies.with(request.separations.getFirst(), "price", new Money(BigDecimal.TEN, "USD")));
        TopologyRequest built = request.build();

        assertThatThrownBy(() -> planning.plan(built))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .extracting(Fault::pointer)
                                .containsExactly("/design/network/separations/0/price/currency"));
    }

    /** Forty-eight axes, every fourth of which must be apart from the next: proven or nearly, and a layout that holds. */
    @Test
    void aMachineOfRealSizeKeepsItsPairsApart() {
        TopologyRequests machine = TopologyRequests.machine(48, 16, 4, 7);
        for (int k = 0; k + 1 < 48; k += 4) {
            machine.apart(k % 8 == 0 ? -1 : 40, "A" + (k + 1), "A" + (k + 2));
        }
        TopologyRequest request = machine.build();

        TopologyResult result = planning.plan(request);
        TopologyResult quick = planning.plan(LayoutPlanningTest.withEffort(request, LayoutEffort.HEURISTIC));

        LayoutChecker.check(request, result);
        LayoutChecker.check(request, quick);
        assertThat(requireNonNull(result.gap()).value()).isLessThan(0.02);
        assertThat(requireNonNull(quick.gap()).value()).isLessThan(0.1);
        assertThat(planning.plan(request)).isEqualTo(result);
    }
}
