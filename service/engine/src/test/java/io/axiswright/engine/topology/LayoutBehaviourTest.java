package io.axiswright.engine.topology;

import static io.axiswright.engine.topology.LayoutPlanningTest.cableLength;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Machines of real size, and how the layout answers to changes of the request. */
class LayoutBehaviourTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    @ParameterizedTest
    @ValueSource(ints = {16, 48})
    void aMachineIsPlannedAtAProvenLeastCost(int axes) {
        TopologyRequest request = TopologyRequests.machine(axes, axes / 3, 4, 7).build();

        TopologyResult result = planning.plan(request);

        LayoutChecker.check(request, result);
        assertThat(result.method()).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
        assertThat(result.gap()).isEqualTo(new Ratio(0));
        assertThat(result.bound()).isEqualTo(result.cost());
    }

    @Test
    @Tag("slow")
    void aLargeMachineIsPlannedWithASmallGap() {
        TopologyRequest request = TopologyRequests.machine(128, 32, 6, 7).build();

        TopologyResult result = planning.plan(request);

        LayoutChecker.check(request, result);
        assertThat(requireNonNull(result.gap()).value()).isBetween(0.0, 0.06);
    }

    @Test
    void theSameRequestHasTheSameLayout() {
        TopologyRequest request = TopologyRequests.machine(32, 10, 4, 3).build();

        TopologyResult first = planning.plan(request);

        assertThat(planning.plan(request)).isEqualTo(first);
        assertThat(new LayoutPlanning().plan(request)).isEqualTo(first);
    }

    /** Alone and beside others, twenty times: one answer. */
    @Test
    void theSameRequestHasTheSameLayoutOnAnyNumberOfThreads() throws InterruptedException, ExecutionException {
        TopologyRequest request = TopologyRequests.machine(24, 8, 4, 6).build();
        TopologyResult alone = planning.plan(request);
        try (var threads = Executors.newFixedThreadPool(3)) {
            for (var answer : threads.invokeAll(Collections.nCopies(19, () -> planning.plan(request)))) {
                assertThat(answer.get()).isEqualTo(alone);
            }
        }
    }

    /** Half a per cent is what a design of that size is to be planned within. */
    @Test
    void aLargeMachineIsPlannedWithinHalfAPerCent() {
        TopologyRequest request = TopologyRequests.machine(128, 32, 6, 8).build();
        TopologyResult result = planning.plan(request);

        assertThat(requireNonNull(result.gap()).value()).isLessThanOrEqualTo(0.005);
        LayoutChecker.check(request, result);
    }

    @Test
    void aSearchLimitIsHonoured() {
        TopologyRequests machine = TopologyRequests.machine(48, 16, 4, 1);
        TopologyResult proven = planning.plan(machine.build());
        machine.searchLimit = new Time(0);
        TopologyResult quick = planning.plan(machine.build());
        machine.searchLimit = new Time(1e-4);
        TopologyResult brief = planning.plan(machine.build());

        assertThat(proven.method()).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
        assertThat(quick.method()).isEqualTo(LayoutMethod.HEURISTIC);
        assertThat(brief.method()).isEqualTo(LayoutMethod.SEARCH_LIMIT);
        BigDecimal optimum = requireNonNull(proven.cost()).amount();
        for (TopologyResult result : List.of(quick, brief)) {
            assertThat(requireNonNull(result.cost()).amount()).isGreaterThanOrEqualTo(optimum);
            assertThat(requireNonNull(result.bound()).amount()).isLessThanOrEqualTo(optimum);
        }
    }

    @Test
    void aMoveWithinACableStepKeepsTheLayout() {
        TopologyRequests machine = TopologyRequests.machine(24, 8, 4, 5);
        TopologyRequest before = machine.build();
        Map<String, String> layout = assignment(planning.plan(before));
        NetworkAxis moved = machine.axes.get(7);
        machine.axes.set(
                7,
                new NetworkAxis(
                        moved.id(),
                        TopologyRequests.at(
                                moved.position().x().si() + 1e-5,
                                moved.position().y().si()),
                        moved.stopZone(),
                        moved.holdingBrake(),
                        moved.commandRate(),
                        moved.index()));

        assertThat(assignment(planning.plan(machine.build()))).isEqualTo(layout);
    }

    @Test
    void theOrderOfAxesAndPlacesDoesNotChangeTheCost() {
        for (long seed = 1; seed <= 40; seed++) {
            TopologyRequest request = TopologyRequests.toy(seed);
            var axes = new ArrayList<>(request.axes());
            var places = new ArrayList<>(request.network().places());
            Collections.reverse(axes);
            Collections.reverse(places);
            var network = new io.axiswright.engine.design.Network(
                    request.network().host(), places, request.network().route(), null, null, null, null);
            var reversed = new TopologyRequest(
                    network,
                    axes,
                    request.gatewayTypes(),
                    request.cableAssemblies(),
                    CatalogueSource.SENT,
                    "EUR",
                    request.effort());

            TopologyResult one = planning.plan(request);
            TopologyResult other = planning.plan(reversed);

            assertThat(other.cost()).as("seed %d", seed).isEqualTo(one.cost());
            assertThat(cableLength(other)).as("seed %d", seed).isCloseTo(cableLength(one), within(1e-9));
        }
    }

    @Test
    void moreToChooseFromNeverCostsMore() {
        int compared = 0;
        for (long seed = 1; seed <= 60; seed++) {
            TopologyRequest request = TopologyRequests.toy(seed);
            TopologyResult before = planning.plan(request);
            if (before.clash() != null) {
                continue;
            }
            var cables = new ArrayList<>(request.cableAssemblies());
            var more = new TopologyRequests().cable(CableUse.SPUR, 30, 20).cable(CableUse.TRUNK, 30, 9);
            more.cables.forEach(cable -> cables.add(rename(cable)));
            TopologyResult after = planning.plan(new TopologyRequest(
                    request.network(),
                    request.axes(),
                    request.gatewayTypes(),
                    cables,
                    CatalogueSource.SENT,
                    "EUR",
                    request.effort()));
            assertThat(requireNonNull(after.cost()).amount())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(requireNonNull(before.cost()).amount());
            compared++;
        }
        assertThat(compared).isGreaterThan(20);
    }

    @Test
    void withoutTheExactSolverTheHeuristicAnswersWithItsGap() {
        var absent = new LayoutSolver() {
            @Override
            public Answer solve(LayoutModel model, @Nullable Layout start) {
                return new Answer(start, 0, false);
            }

            @Override
            public Existence existence(LayoutModel model, WorkBudget budget) {
                return Existence.OPEN;
            }
        };
        TopologyRequest request = TopologyRequests.machine(48, 16, 4, 7).build();

        TopologyResult result = new LayoutPlanning(absent).plan(request);

        LayoutChecker.check(request, result);
        assertThat(requireNonNull(result.gap()).value()).isBetween(0.0, 0.05);
        assertThat(requireNonNull(result.bound()).amount())
                .isLessThanOrEqualTo(requireNonNull(result.cost()).amount());
    }

    @Test
    void equalAxesHangOnGatewaysInTheirOrder() {
        var request = new TopologyRequests().port(9000).place(5, 0, 2).type(50, 2, 2, 0, StopScope.NONE);
        for (int k = 0; k < 4; k++) {
            request.axis(5);
        }
        request.cable(CableUse.HOST, 9, 1).cable(CableUse.TRUNK, 9, 1).cable(CableUse.SPUR, 9, 1);

        TopologyResult result = planning.plan(request.build());

        assertThat(result.gateways())
                .extracting(
                        gateway -> gateway.spurs().stream().map(SpurLink::axis).toList())
                .containsExactly(List.of("A1", "A2"), List.of("A3", "A4"));
        assertThat(result.gateways()).extracting(PlacedGateway::upstream).containsExactly(null, "G1");
        assertThat(result.binding())
                .extracting(LimitUse::limit)
                .containsExactly(
                        LimitKind.HOST_PORTS,
                        LimitKind.CHAIN_DEPTH,
                        LimitKind.DRIVE_PORTS,
                        LimitKind.DRIVE_PORTS,
                        LimitKind.PLACE_ROOM);
    }

    @Test
    void everyLinkHasItsDerivation() {
        TopologyRequest request = TopologyRequests.machine(16, 5, 4, 7).build();

        TopologyResult result = planning.plan(request);

        assertThat(result.derivations().stream().filter(one -> one.symbol().equals("L")))
                .hasSize(16 + result.gateways().size())
                .allSatisfy(one -> assertThat(input(one, "k") * input(one, "w") + 2 * input(one, "s"))
                        .isCloseTo(one.result().si(), within(1e-9)));
    }

    private static double input(Derivation derivation, String symbol) {
        return Objects.requireNonNull(derivation.inputs().get(symbol)).si();
    }

    private static io.axiswright.engine.catalogue.CableAssembly rename(
            io.axiswright.engine.catalogue.CableAssembly cable) {
        return new io.axiswright.engine.catalogue.CableAssembly(
                "more-" + cable.id(),
                cable.description(),
                cable.price(),
                cable.needs(),
                cable.use(),
                cable.length(),
                null,
                null,
                cable.outerDiameter());
    }

    private static Map<String, String> assignment(TopologyResult result) {
        var assignment = new TreeMap<String, String>();
        for (PlacedGateway gateway : result.gateways()) {
            gateway.spurs().forEach(spur -> assignment.put(spur.axis(), gateway.place() + gateway.hostPort()));
        }
        return assignment;
    }
}
