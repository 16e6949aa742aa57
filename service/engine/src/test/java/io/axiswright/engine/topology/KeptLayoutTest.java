package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.KeptGateway;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Layouts that are there already, axes whose place is fixed, ports left free: against every layout there is, and in words. */
class KeptLayoutTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    private static KeptLayout kept(List<PlacedGateway> gateways, double movePrice) {
        return new KeptLayout(
                gateways.stream().map(PlacedGateway::kept).toList(), new Money(BigDecimal.valueOf(movePrice), "EUR"));
    }

    private static void move(TopologyRequests machine, int axis, double metres) {
        NetworkAxis old = machine.axes.get(axis);
        machine.axes.set(
                axis,
                new NetworkAxis(
                        old.id(),
                        TopologyRequests.at(
                                old.position().x().si() + metres,
                                old.position().y().si()),
                        old.stopZone(),
                        old.holdingBrake(),
                        old.commandRate(),
                        old.index()));
    }

    /** Random kept layouts, mostly bad ones: what moves is exactly what pays. */
    @Test
    void noLayoutIsCheaperMovesIncluded() {
        int moving = 0;
        int staying = 0;
        for (long seed = 1; seed <= 200; seed++) {
            TopologyRequests toy = TopologyRequests.copy(TopologyRequests.toy(seed));
            var random = new SplittableRandom(seed);
            int price = 2 + random.nextInt(20);
            toy.keep = new KeptLayout(
                    List.of(
                            gateway(toy, random, 1, axis -> axis % 2 == 0),
                            gateway(toy, random, 2, axis -> axis % 2 == 1 && axis != 3)),
                    new Money(BigDecimal.valueOf(price), "EUR"));
            TopologyRequest request = toy.build();
            double cheapest = EveryLayout.cheapest(request)[0];
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest));
            if (result.clash() == null) {
                double cost = requireNonNull(result.cost()).amount().doubleValue();
                double moves = requireNonNull(result.moveCost()).amount().doubleValue();
                assertThat(cost + moves).as("seed %d", seed).isCloseTo(cheapest, within(1e-6));
                assertThat(result.method()).as("seed %d", seed).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
                LayoutChecker.check(request, result);
                moving += moves > 0 ? 1 : 0;
                staying += moves > 0 ? 0 : 1;
            }
        }
        assertThat(moving).isGreaterThan(10);
        assertThat(staying).isGreaterThan(10);
    }

    private static KeptGateway gateway(
            TopologyRequests toy, SplittableRandom random, int depth, java.util.function.IntPredicate which) {
        return new KeptGateway(
                toy.types.getFirst().id(),
                toy.places.get(random.nextInt(toy.places.size())).id(),
                toy.ports.getFirst().id(),
                depth,
                toy.axes.stream()
                        .filter(axis -> which.test(axis.index()))
                        .map(NetworkAxis::id)
                        .toList());
    }

    @Test
    void fixedPlacesAndSparePortsAreHeldAtLeastCost() {
        int built = 0;
        for (long seed = 1; seed <= 200; seed++) {
            TopologyRequests toy = TopologyRequests.copy(TopologyRequests.toy(seed));
            var random = new SplittableRandom(seed);
            toy.fixed = List.of(new FixedPlace(
                    toy.axes.getLast().id(),
                    toy.places.get(random.nextInt(toy.places.size())).id()));
            toy.sparePorts = random.nextInt(3) == 0 ? 1 : null;
            TopologyRequest request = toy.build();
            double cheapest = EveryLayout.cheapest(request)[0];
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest));
            if (result.clash() == null) {
                built++;
                assertThat(requireNonNull(result.cost()).amount().doubleValue())
                        .as("seed %d", seed)
                        .isCloseTo(cheapest, within(1e-6));
                LayoutChecker.check(request, result);
            }
        }
        assertThat(built).isGreaterThan(30);
    }

    @Test
    void anUnchangedMachineKeepsItsLayout() {
        TopologyRequests machine = TopologyRequests.machine(32, 10, 4, 3);
        TopologyResult before = planning.plan(machine.build());
        machine.keep = kept(before.gateways(), 0);

        TopologyResult after = planning.plan(machine.build());

        assertThat(after.gateways()).isEqualTo(before.gateways());
        assertThat(after.changes()).isEmpty();
        assertThat(requireNonNull(after.moveCost()).amount()).isEqualByComparingTo(BigDecimal.ZERO);
    }

    /** An axis that moves by a metre may need a longer cable or another gateway; nothing else moves unless it pays. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anAxisMovesByAMetre(long seed) {
        TopologyRequests machine = TopologyRequests.machine(24, 8, 4, seed);
        TopologyResult before = planning.plan(machine.build());
        move(machine, 11, 1);
        TopologyResult free = planning.plan(machine.build());
        machine.keep = kept(before.gateways(), 50);
        TopologyRequest request = machine.build();

        TopologyResult after = planning.plan(request);

        LayoutChecker.check(request, after);
        assertThat(after.changes()).allMatch(change -> change.kind() == LayoutChangeKind.AXIS_MOVED);
        double saved = 0;
        for (LayoutChange change : after.changes()) {
            assertThat(change.text()).contains(change.subject()).contains(requireNonNull(change.to()));
            saved += 50;
        }
        double unmoved = price(machine, before);
        double now = requireNonNull(after.cost()).amount().doubleValue();
        // what moves saves more than the moves cost; left as it was the machine would cost this
        assertThat(now + saved).isLessThanOrEqualTo(unmoved + 1e-9);
        assertThat(now)
                .isGreaterThanOrEqualTo(requireNonNull(free.cost()).amount().doubleValue() - 1e-9);
    }

    /** What the machine costs with every axis on the gateway it hung on, cables picked anew by length. */
    private static double price(TopologyRequests machine, TopologyResult layout) {
        double sum = 0;
        for (PlacedGateway gateway : layout.gateways()) {
            sum += machine.types.getFirst().price() == null ? 0 : 420;
            sum += cheapest(
                    machine,
                    gateway.upstream() == null ? CableUse.HOST : CableUse.TRUNK,
                    gateway.linkRouteLength().si());
            for (SpurLink spur : gateway.spurs()) {
                var axis = machine.axes.stream()
                        .filter(a -> a.id().equals(spur.axis()))
                        .findFirst()
                        .orElseThrow();
                var place = machine.places.stream()
                        .filter(p -> p.id().equals(gateway.place()))
                        .findFirst()
                        .orElseThrow();
                sum += cheapest(
                        machine,
                        CableUse.SPUR,
                        machine.route.between(axis.position(), place.position()).si());
            }
        }
        return sum;
    }

    private static double cheapest(TopologyRequests machine, CableUse use, double route) {
        return machine.cables.stream()
                .filter(cable -> cable.use() == use && cable.length().si() >= route - 1e-9)
                .mapToDouble(cable -> requireNonNull(cable.price()).amount().doubleValue())
                .min()
                .orElseThrow();
    }

    /** Two places, one axis at each; the second axis goes and a third comes beyond the first place. */
    @Test
    void theChangesAreSaid() {
        var machine = new TopologyRequests()
                .port(9000)
                .place(0, 0, 1)
                .place(20, 0, 1)
                .axis(0)
                .axis(20);
        machine.type(100, 2, 2, 0, StopScope.NONE).cable(CableUse.HOST, 30, 10).cable(CableUse.TRUNK, 30, 10);
        machine.cable(CableUse.SPUR, 2, 5).cable(CableUse.SPUR, 30, 300);
        machine.keep = new KeptLayout(
                List.of(
                        new KeptGateway("T1", "L1", "P1", 1, List.of("A1")),
                        new KeptGateway("old", "L2", "P1", 2, List.of("gone")),
                        new KeptGateway("T1", "L9", "P1", 3, List.of())),
                null);

        TopologyResult result = planning.plan(machine.build());

        assertThat(result.changes())
                .extracting(LayoutChange::kind, LayoutChange::subject, LayoutChange::from, LayoutChange::to)
                .containsExactlyInAnyOrder(
                        tuple(LayoutChangeKind.GATEWAY_RETYPED, "G2", "old", "T1"),
                        tuple(LayoutChangeKind.GATEWAY_REMOVED, "L9", "L9", null),
                        tuple(LayoutChangeKind.AXIS_ADDED, "A2", null, "L2"),
                        tuple(LayoutChangeKind.AXIS_REMOVED, "gone", "L2", null));
        assertThat(result.changes())
                .extracting(LayoutChange::text)
                .contains("Axis gone, which hung in L2, is no longer in the design.");
    }

    @Test
    void aFixedPlaceOutOfReachIsSaid() {
        var machine =
                new TopologyRequests().port(9000).place(0, 0, 1).place(20, 0, 1).axis(0);
        machine.type(100, 2, 2, 0, StopScope.NONE).cable(CableUse.HOST, 30, 10).cable(CableUse.SPUR, 5, 5);
        machine.fixed = List.of(new FixedPlace("A1", "L2"));

        TopologyResult result = planning.plan(machine.build());

        assertThat(result.findings())
                .extracting(
                        f -> f.code(),
                        f -> f.subject(),
                        f -> requireNonNull(f.value()).si())
                .containsExactly(tuple(FindingCode.TOPOLOGY_SPUR_TOO_LONG, "A1", 20.0));
    }
}
