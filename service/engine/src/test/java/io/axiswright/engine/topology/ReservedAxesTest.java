package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Frequency;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Ports kept for axes to come: against every layout there is, and where they hang. */
class ReservedAxesTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    /** One port, two places, gateways of two drive ports. */
    private static TopologyRequests small() {
        return new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.TRUNK, 10, 7)
                .cable(CableUse.SPUR, 3, 4)
                .cable(CableUse.SPUR, 10, 6)
                .port(5000)
                .place(0, 0, 1)
                .place(8, 0, 1)
                .type(50, 2, 2, 1, StopScope.GATEWAY);
    }

    /** A random toy with one or two reservations, every kind of limit on them now and then. */
    private static TopologyRequest toy(long seed) {
        TopologyRequests toy = TopologyRequests.copy(TopologyRequests.toy(seed));
        var random = new SplittableRandom(seed);
        while (toy.axes.size() > 3) {
            toy.axes.removeLast();
        }
        List<String> spurs = toy.cables.stream()
                .filter(cable -> cable.use() == CableUse.SPUR)
                .map(cable -> cable.id())
                .toList();
        for (int k = 0; k <= random.nextInt(2); k++) {
            boolean box = random.nextInt(4) == 0;
            boolean atPlace = random.nextInt(4) == 0;
            toy.reserved.add(new ReservedAxis(
                    "R" + k,
                    random.nextInt(3) == 0 ? null : 1 + random.nextInt(2),
                    atPlace && !box ? null : TopologyRequests.at(random.nextInt(13), random.nextInt(4)),
                    box ? TopologyRequests.at(random.nextInt(13), random.nextInt(4)) : null,
                    atPlace ? toy.places.get(random.nextInt(toy.places.size())).id() : null,
                    spurs.isEmpty() || random.nextInt(3) > 0 ? null : List.of(spurs.get(random.nextInt(spurs.size()))),
                    random.nextInt(3) == 0,
                    random.nextInt(3) == 0 ? "Z0" : null,
                    new Frequency(500 + 250 * random.nextInt(3)),
                    null));
        }
        return toy.build();
    }

    @Test
    void noLayoutThatKeepsThePortsIsCheaper() {
        int built = 0;
        int dearer = 0;
        for (long seed = 1; seed <= 300; seed++) {
            TopologyRequest request = toy(seed);
            double[] cheapest = EveryLayout.cheapest(request);
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest[0]));
            if (result.clash() == null) {
                built++;
                LayoutChecker.check(request, result);
                double cost = requireNonNull(result.cost()).amount().doubleValue();
                assertThat(cost).as("seed %d", seed).isCloseTo(cheapest[0], within(1e-6));
                assertThat(LayoutPlanningTest.cableLength(result))
                        .as("seed %d", seed)
                        .isCloseTo(cheapest[1], within(1e-6));
                TopologyRequests without = TopologyRequests.copy(request);
                without.axes.removeIf(axis -> axis.reserved() != null);
                dearer += cost > EveryLayout.cheapest(without.build())[0] + 1e-6 ? 1 : 0;
                TopologyResult quick = planning.plan(LayoutPlanningTest.withEffort(request, LayoutEffort.HEURISTIC));
                if (quick.clash() == null) {
                    LayoutChecker.check(request, quick);
                    assertThat(requireNonNull(quick.bound()).amount().doubleValue())
                            .as("seed %d", seed)
                            .isLessThanOrEqualTo(cheapest[0] + 1e-6);
                }
            }
        }
        assertThat(built).as("toys that can be built").isGreaterThan(75);
        assertThat(dearer).as("layouts that cost more for the ports they keep").isGreaterThan(20);
    }

    /** Two axes fill a gateway of two ports: the third to come takes a second gateway, whose trunk cable is bought, its spur not. */
    @Test
    void aPortToComeBuysAGatewayButNoSpur() {
        TopologyRequests request = small().axis(1).axis(2).reserve(1, 8, 1000);

        TopologyResult result = planning.plan(request.build());

        // 2 gateways of 50, host cable 5, trunk cable 7, two spurs of 3 m at 4
        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo("120");
        assertThat(result.gateways())
                .extracting(PlacedGateway::place, gateway -> gateway.spurs().size(), PlacedGateway::spareDrivePorts)
                .containsExactlyInAnyOrder(tuple("L1", 2, 0), tuple("L2", 0, 2));
        assertThat(result.gateways())
                .filteredOn(gateway -> gateway.place().equals("L1"))
                .extracting(PlacedGateway::reserved)
                .containsOnlyNulls();
        assertThat(result.gateways())
                .filteredOn(gateway -> gateway.place().equals("L2"))
                .flatExtracting(PlacedGateway::reservedList)
                .extracting(ReservedPorts::id, ReservedPorts::ports, ReservedPorts::cable)
                .containsExactly(tuple("R1", 1, "S-2"));
    }

    /** The box reaches from 1 m to 6 m: from the place at 0 m that is 6 m, too far for the cable of 3 m. */
    @Test
    void theSpurReachesEveryCornerOfTheBox() {
        TopologyRequests request = small().axis(1).reserve(1, 1, 1000);
        request.reserved.set(0, Copies.with(request.reserved.getFirst(), "farCorner", TopologyRequests.at(6, 0)));

        ReservedPorts kept = planning.plan(request.build())
                .gateways()
                .getFirst()
                .reservedList()
                .getFirst();

        assertThat(kept.routeLength().si()).isCloseTo(6, within(1e-9));
        assertThat(kept.cable()).isEqualTo("S-3");
    }

    /** The port carries 5000 commands: 3000 of the axis and 3000 to come are too many, each alone is not. */
    @Test
    void ratesToComeCountAndThatTheyClashIsTold() {
        TopologyRequests request = small().axis(1, 0, null, false, 3000).reserve(3, 1, 1000);

        TopologyResult result = planning.plan(request.build());

        assertThat(result.gateways()).isEmpty();
        assertThat(result.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.TOPOLOGY_COMMAND_RATE_SHORT, FindingCode.TOPOLOGY_GROWTH_CLASHES);
        assertThat(result.findings().getLast().text()).contains("3 drive ports");
        assertThat(result.findings().getLast().pointer()).isEqualTo("/design/network/reserved");
    }

    @Test
    void anAxisToComeOutOfReach() {
        Finding finding = planning.plan(small().axis(1).reserve(1, 20, 1000).build())
                .findings()
                .getFirst();

        assertThat(finding.code()).isEqualTo(FindingCode.TOPOLOGY_SPUR_TOO_LONG);
        assertThat(finding.pointer()).isEqualTo("/design/network/reserved/0/position");
    }

    @Test
    void aSpurCableThatIsNotThereIsRefused() {
        TopologyRequests request = small().axis(1).reserve(1, 1, 1000);
        request.reserved.set(0, Copies.with(request.reserved.getFirst(), "spurCables", List.of("S-2", "T-1")));
        TopologyRequest built = request.build();

        assertThatThrownBy(() -> planning.plan(built))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .extracting(Fault::pointer)
                                .containsExactly("/design/network/reserved/0/spurCables/1"));
    }
}
