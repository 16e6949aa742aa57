package io.axiswright.engine.topology;

import static io.axiswright.engine.topology.TopologyRequests.euro;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.SecondMeasure;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A host at 0 m, a place there and one at 25 m, gateways at 100. Host cable of 5 m at 10, trunk cable of 30 m at 15; spurs of 10 m at 20 (S-2)
 * and of 20 m at 45 (S-3), two of which may be joined up to 35 m. An axis at 5 m hangs on the first place by S-2.
 */
class JoinedCablesTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    private static TopologyRequests machine(double far) {
        return new TopologyRequests()
                .port(9000)
                .place(0, 0, 1)
                .place(25, 0, 1)
                .axis(5)
                .axis(far)
                .type(100, 4, 2, 0, StopScope.NONE)
                .cable(CableUse.HOST, 5, 10)
                .cable(CableUse.TRUNK, 30, 15)
                .cable(CableUse.SPUR, 10, 20)
                .cable(CableUse.SPUR, 20, 45);
    }

    private static TopologyRequest coupled(TopologyRequests machine, double coupler) {
        List<CableAssembly> cables = new ArrayList<>(machine.build().cableAssemblies());
        cables.replaceAll(cable -> cable.use() == CableUse.SPUR
                ? Copies.with(Copies.with(cable, "coupler", "c"), "joinedLength", new Length(35))
                : cable);
        List<CoupledCables> pairs =
                CoupledCables.of(cables, id -> new Accessory(id, "coupler", euro(coupler), List.of())).stream()
                        .filter(pair -> pair.length().si() > 20)
                        .toList();
        return Copies.with(Copies.with(machine.build(), "cableAssemblies", cables), "coupled", pairs);
    }

    private TopologyResult plan(TopologyRequest request) {
        TopologyResult result = planning.plan(request);
        LayoutChecker.check(request, result);
        assertThat(result.method()).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
        assertThat(result.bound()).isEqualTo(result.cost());
        return result;
    }

    /**
     * An axis at 28 m. 10 + 10 m do not reach, 20 + 20 m are more than 35 m, so 10 + 20 m at 20 + 45 + 7 = 72: 100 + 10 + 20 + 72 = 202. A
     * second gateway would take 100 + 15 + 20 = 135 instead of the 72.
     */
    @Test
    void aSpurIsJoinedWhereThatIsCheaperThanAGateway() {
        TopologyResult result = plan(coupled(machine(28), 7));

        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo("202");
        SpurLink spur = result.gateways().getFirst().spurs().getLast();
        assertThat(spur)
                .isEqualTo(new SpurLink("A2", "S-2", new Length(28), new Length(30), new CableExtension("c", "S-3")));
        assertThat(result.gateways().getFirst().spurs().getFirst().extension()).isNull();
        assertThat(result.findings())
                .extracting(Finding::code, Finding::pointer, Finding::value, Finding::limit)
                .containsExactly(tuple(
                        FindingCode.TOPOLOGY_CABLES_JOINED, "/design/axes/1/position", new Length(28), new Length(30)));
    }

    /** With a coupler at 90 joining takes 155, so the gateway at 135 is cheaper: 100 + 10 + 20 + 135 = 265. */
    @Test
    void theSearchKnowsWhatACouplerCosts() {
        TopologyResult result = plan(coupled(machine(28), 90));

        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo("265");
        assertThat(result.gateways()).hasSize(2);
        assertThat(result.findings()).isEmpty();
    }

    /** Spurs of 30 m for 202, or, limited to 20 m or less, the second gateway for 265. */
    @Test
    void theTradeOffKnowsJoinedLengths() {
        TopologyRequests machine = machine(28);
        machine.tradeOff = SecondMeasure.LONGEST_SPUR;

        assertThat(requireNonNull(plan(coupled(machine, 7)).tradeOff()).points())
                .extracting(point -> point.cost().amount().stripTrailingZeros(), TradeOffPoint::longestSpur)
                .containsExactly(
                        tuple(new BigDecimal("202"), new Length(30)), tuple(new BigDecimal("265"), new Length(10)));
    }

    /** 58 m is 33 m from the second place, which only 20 + 20 m would reach: the first axis has its layout all the same, 130. */
    @Test
    void anAxisOutOfReachLeavesTheOthersTheirLayout() {
        TopologyRequest request = coupled(machine(58), 7);

        TopologyResult result = planning.plan(request);

        assertThat(result.unconnected()).containsExactly("A2");
        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo("130");
        assertThat(result.method()).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
        assertThat(result.gap()).isEqualTo(new Ratio(0));
        assertThat(result.gateways()).hasSize(1);
        assertThat(result.gateways().getFirst().spurs())
                .extracting(SpurLink::axis)
                .containsExactly("A1");
        assertThat(requireNonNull(result.clash()).limits()).isNotEmpty();
        assertThat(result.findings())
                .extracting(Finding::code, Finding::subject, Finding::value, Finding::limit)
                .containsExactly(tuple(FindingCode.TOPOLOGY_SPUR_TOO_LONG, "A2", new Length(33), new Length(30)));
        TopologyRequest without = coupled(machine(58), 7).without(java.util.BitSet.valueOf(new long[] {2}));
        LayoutChecker.check(without, planning.plan(without));
        assertThat(planning.plan(without).gateways()).isEqualTo(result.gateways());
    }

    /** Where nothing reaches any axis there is no layout at all. */
    @Test
    void noAxisInReachLeavesNone() {
        TopologyRequests machine = machine(70);
        machine.axes.removeFirst();

        TopologyResult result = planning.plan(coupled(machine, 7));

        assertThat(result.gateways()).isEmpty();
        assertThat(result.unconnected()).isNull();
        assertThat(result.method()).isEqualTo(LayoutMethod.NONE);
    }
}
