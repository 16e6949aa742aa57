package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Gateways coupled directly, without a trunk cable: against every layout there is. */
class DirectCouplingTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    private static void couple(TopologyRequests request, int type, @Nullable Integer row) {
        GatewayType plain = request.types.get(type);
        request.types.set(type, Copies.with(plain, "directRow", row));
    }

    private static TopologyRequest toy(long seed) {
        TopologyRequests toy = TopologyRequests.copy(TopologyRequests.toy(seed));
        var random = new SplittableRandom(seed);
        for (int type = 0; type < toy.types.size(); type++) {
            couple(toy, type, random.nextInt(4) == 0 ? null : 2 + random.nextInt(2));
        }
        for (int place = 0; place < toy.places.size(); place++) {
            Place old = toy.places.get(place);
            toy.places.set(place, new Place(old.id(), old.position(), toy.places.size() == 1 ? 3 : 2));
        }
        while (toy.axes.size() > 4) {
            toy.axes.removeLast();
        }
        return toy.build();
    }

    @Test
    void noLayoutWithCoupledGatewaysIsCheaper() {
        int built = 0;
        int coupled = 0;
        int found = 0;
        for (long seed = 1; seed <= 300; seed++) {
            TopologyRequest request = toy(seed);
            double[] cheapest = EveryLayout.cheapest(request);
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest[0]));
            if (result.clash() != null) {
                continue;
            }
            built++;
            assertThat(result.method()).as("seed %d", seed).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
            LayoutChecker.checkCheapest("seed " + seed, request, result, cheapest);
            coupled += result.gateways().stream().anyMatch(gateway -> gateway.linkCable() == null) ? 1 : 0;
            TopologyResult quick = planning.plan(LayoutPlanningTest.withEffort(request, LayoutEffort.HEURISTIC));
            if (quick.clash() == null) {
                found++;
                LayoutChecker.check(request, quick);
                assertThat(requireNonNull(quick.bound()).amount().doubleValue())
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(cheapest[0] + 1e-6);
            }
        }
        assertThat(built).as("toys that can be built").isGreaterThan(75);
        assertThat(coupled).as("layouts with gateways coupled directly").isGreaterThan(20);
        assertThat(found).as("found by the heuristic of %d", built).isGreaterThan(built * 9 / 10);
    }

    /** Ten axes by one place: five gateways of two ports, in rows of no more than two: two trunk cables part three rows. */
    private static TopologyRequests five() {
        var request = new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.TRUNK, 10, 7)
                .cable(CableUse.SPUR, 10, 4)
                .port(20000)
                .place(0, 0, 5)
                .type(50, 2, 5, 1, StopScope.NONE);
        for (int k = 0; k < 10; k++) {
            request.axis(1);
        }
        couple(request, 0, 2);
        return request;
    }

    @Test
    void aRowIsNoLongerThanTheTypeAllows() {
        TopologyResult result = planning.plan(five().build());

        // 5 · 50 + 5 + 2 · 7 + 10 · 4
        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo("309");
        assertThat(result.gateways())
                .extracting(PlacedGateway::linkCable)
                .isEqualTo(Arrays.asList("H-0", null, "T-1", null, "T-1"));
        assertThat(result.gateways()).extracting(PlacedGateway::depth).containsExactly(1, 2, 3, 4, 5);
    }

    /** Without trunk cables in the catalogue a row of two is all there can be: four axes, not five. */
    @Test
    void withoutTrunkCablesARowIsAllThereIs() {
        for (int axes : List.of(4, 5)) {
            TopologyRequests request = five();
            request.cables.removeIf(cable -> cable.use() == CableUse.TRUNK);
            request.axes.subList(axes, 10).clear();

            TopologyResult result = planning.plan(request.build());

            assertThat(result.gateways()).hasSize(axes == 4 ? 2 : 0);
            assertThat(result.gateways().stream().map(PlacedGateway::linkCable).filter(Objects::isNull))
                    .hasSize(axes == 4 ? 1 : 0);
        }
    }

    /** The depth counts coupled gateways like any: five of them in a trunk of four are too many. */
    @Test
    void coupledGatewaysCountInTheDepth() {
        TopologyRequests request = five();
        request.types.set(0, Copies.with(request.types.getFirst(), "chainDepth", 4));

        assertThat(planning.plan(request.build()).gateways()).isEmpty();
    }

    @Test
    void everyCableHasItsDerivationAndNoCouplingHas() {
        TopologyResult result = planning.plan(five().build());

        assertThat(result.derivations().stream().filter(one -> one.symbol().equals("L")))
                .hasSize(10 + 3);
    }
}
