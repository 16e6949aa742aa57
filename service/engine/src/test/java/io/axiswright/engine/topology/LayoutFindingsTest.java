package io.axiswright.engine.topology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Every remark of the discipline, raised by the smallest machine that deserves it. */
class LayoutFindingsTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    private static TopologyRequests cabled() {
        return new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.TRUNK, 10, 5)
                .cable(CableUse.SPUR, 10, 5);
    }

    /** One port, one place at 5 m, one type of two drive ports, depth two. */
    private static TopologyRequests small() {
        return cabled().port(5000).place(5, 0, 2).type(50, 2, 2, 1, StopScope.GATEWAY);
    }

    @Test
    void anAxisOutOfReach() {
        Finding finding = only(small().axis(5).axis(18), FindingCode.TOPOLOGY_SPUR_TOO_LONG);

        assertThat(finding.text()).contains("A2", "13 m", "10 m");
        assertThat(finding.pointer()).isEqualTo("/design/axes/1/position");
    }

    @Test
    void aHostOutOfReach() {
        TopologyRequests request = small().axis(5);
        request.hostAt = TopologyRequests.at(-12, 0);

        assertThat(find(request, FindingCode.TOPOLOGY_HOST_LINK_TOO_LONG).text())
                .contains("17 m", "10 m");
    }

    @Test
    void aPlaceBeyondTheTrunkCables() {
        Finding finding = only(small().place(17, 0, 1).axis(5).axis(17), FindingCode.TOPOLOGY_TRUNK_TOO_LONG);

        assertThat(finding.text()).contains("A2", "12 m", "10 m");
    }

    @Test
    void aPlaceBeyondTheDepthOfATrunk() {
        TopologyRequests request =
                small().place(14, 0, 1).place(23, 0, 1).axis(5).axis(26);

        Finding finding = only(request, FindingCode.TOPOLOGY_TRUNK_TOO_DEEP);

        assertThat(amounts(finding)).containsExactly(3, 2);
    }

    @Test
    void tooFewDrivePorts() {
        TopologyRequests request = small();
        for (int k = 0; k < 5; k++) {
            request.axis(5);
        }

        assertThat(amounts(only(request, FindingCode.TOPOLOGY_PORTS_SHORT))).containsExactly(5, 4);
    }

    @Test
    void noGatewayTypeAtAll() {
        TopologyRequests request = cabled().port(5000).place(5, 0, 1).axis(5);

        assertThat(amounts(only(request, FindingCode.TOPOLOGY_PORTS_SHORT))).containsExactly(1, 0);
    }

    @Test
    void tooFewBrakeOutputs() {
        TopologyRequests request = small();
        for (int k = 0; k < 3; k++) {
            request.axis(5, 0, null, true, 1000);
        }

        assertThat(amounts(only(request, FindingCode.TOPOLOGY_BRAKE_OUTPUTS_SHORT)))
                .containsExactly(3, 2);
    }

    @Test
    void moreStopZonesThanGateways() {
        TopologyRequests request = small();
        for (String zone : new String[] {"X", "Y", "Z"}) {
            request.axis(5, 0, zone, false, 1000);
        }

        assertThat(amounts(only(request, FindingCode.TOPOLOGY_ZONES_NEED_GATEWAYS)))
                .containsExactly(3, 2);
    }

    @Test
    void moreStopZonesThanTrunks() {
        TopologyRequests request = cabled().port(5000).place(5, 0, 2).type(50, 2, 2, 1, StopScope.TRUNK);
        request.axis(5, 0, "X", false, 1000).axis(5, 0, "Y", false, 1000);

        assertThat(amounts(only(request, FindingCode.TOPOLOGY_ZONES_NEED_TRUNKS)))
                .containsExactly(2, 1);
    }

    @Test
    void commandRatesBeyondThePorts() {
        TopologyRequests request = small().axis(5, 0, null, false, 3000).axis(5, 0, null, false, 3000);

        assertThat(amounts(only(request, FindingCode.TOPOLOGY_COMMAND_RATE_SHORT)))
                .containsExactly(6000, 5000);
    }

    @Test
    void limitsThatClashOnlyTogether() {
        // Three axes of 3000 commands do not fit two ports of 5000, though 9000 is less than 10000.
        TopologyRequests request = small().port(5000);
        for (int k = 0; k < 3; k++) {
            request.axis(5, 0, null, false, 3000);
        }

        TopologyResult result = planning.plan(request.build());

        assertThat(result.gateways()).isEmpty();
        assertThat(result.findings().getFirst().code()).isEqualTo(FindingCode.TOPOLOGY_NO_LAYOUT);
        assertThat(result.findings().stream()
                        .filter(finding -> finding.code() == FindingCode.TOPOLOGY_LIMITS_CLASH)
                        .map(Finding::text))
                .anyMatch(text -> text.contains("commands per second of a host port"));
    }

    @Test
    void aClashNamesTheShortestCableThatHelps() {
        // Both places are needed for four axes; the second place is in reach of two axes only with 12 m of spur.
        TopologyRequests request =
                cabled().port(9000).place(0, 0, 1).place(9, 0, 1).type(50, 2, 2, 0, StopScope.NONE);
        request.axis(-3).axis(-2).axis(-3).axis(-2);

        TopologyResult result = planning.plan(request.build());

        assertThat(result.findings())
                .filteredOn(finding -> finding.code() == FindingCode.TOPOLOGY_LIMITS_CLASH)
                .extracting(Finding::text)
                .anySatisfy(text -> assertThat(text).contains("spur cable", "11 m", "10 m"))
                .anySatisfy(text -> assertThat(text).contains("gateways in one place", "with 2"))
                .anySatisfy(text -> assertThat(text).contains("drive ports", "with 4"));
    }

    @Test
    void theHeuristicDoesNotClaimThatThereIsNoLayout() {
        TopologyRequests request = small().port(5000);
        for (int k = 0; k < 3; k++) {
            request.axis(5, 0, null, false, 3000);
        }
        request.effort = LayoutEffort.HEURISTIC;

        assertThat(find(request, FindingCode.TOPOLOGY_NOT_FOUND).text()).contains("not proven");
    }

    @Test
    void itemsWithoutAPrice() {
        TopologyRequests request = new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.SPUR, 10, -1)
                .port(5000)
                .place(5, 0, 1)
                .type(50, 2, 1, 0, StopScope.GATEWAY)
                .axis(5)
                .axis(6);

        Finding finding = only(request, FindingCode.TOPOLOGY_PRICE_MISSING);

        assertThat(amounts(finding)).containsExactly(2, 4);
        assertThat(finding.pointer()).isEqualTo("/inlineCatalogue/cableAssemblies/1");
    }

    @Test
    void aStopZoneWithoutAStopInput() {
        TopologyRequests request = cabled().port(5000).place(5, 0, 1).type(50, 2, 1, 0, StopScope.NONE);

        assertThat(only(request.axis(5, 0, "X", false, 1000), FindingCode.TOPOLOGY_NO_STOP_INPUT)
                        .text())
                .contains("G1", "1 of");
    }

    @Test
    void anAxisThatStopsAlong() {
        TopologyRequests request = small().axis(5, 0, "X", false, 1000).axis(5);

        Finding finding = only(request, FindingCode.TOPOLOGY_STOPS_ALONG);

        assertThat(finding.text()).contains("A2", "start");
        assertThat(finding.pointer()).isEqualTo("/design/axes/1");
    }

    @Test
    void idsUsedTwiceAndMixedCurrenciesAreRefusedTogether() {
        TopologyRequests request = small().axis(5);
        request.axes.add(request.axes.getFirst());
        request.places.add(request.places.getFirst());
        TopologyRequest valid = request.build();
        var inDollars = new TopologyRequest(
                valid.network(),
                valid.axes(),
                valid.gatewayTypes(),
                valid.cableAssemblies(),
                CatalogueSource.SENT,
                "USD",
                valid.effort());

        assertThatThrownBy(() -> planning.plan(inDollars)).isInstanceOfSatisfying(InvalidDesign.class, invalid -> {
            assertThat(invalid.faults())
                    .extracting(Fault::pointer)
                    .contains(
                            "/design/axes/1/id",
                            "/design/network/places/1/id",
                            "/inlineCatalogue/gateways/0/price/currency");
            assertThat(invalid.faults())
                    .extracting(Fault::code)
                    .contains(FaultCode.DUPLICATE_ID, FaultCode.INCONSISTENT);
        });
    }

    private Finding only(TopologyRequests request, FindingCode code) {
        TopologyResult result = planning.plan(request.build());
        assertThat(result.findings()).extracting(Finding::code).containsExactly(code);
        return result.findings().getFirst();
    }

    private Finding find(TopologyRequests request, FindingCode code) {
        return planning.plan(request.build()).findings().stream()
                .filter(finding -> finding.code() == code)
                .findFirst()
                .orElseThrow();
    }

    private static int[] amounts(Finding finding) {
        return new int[] {
            (int) Objects.requireNonNull(finding.value()).si(),
            (int) Objects.requireNonNull(finding.limit()).si()
        };
    }
}
