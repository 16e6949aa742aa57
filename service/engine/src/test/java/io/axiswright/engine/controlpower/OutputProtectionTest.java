package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.SITE;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.load;
import static io.axiswright.engine.controlpower.ControlParts.node;
import static io.axiswright.engine.controlpower.ControlParts.protection;
import static io.axiswright.engine.controlpower.ControlParts.spec;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.catalogue.OverloadCurrent;
import io.axiswright.engine.catalogue.ProtectionKind;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OutputProtectionTest {

    /** 30 m of 0.75 mm², 26 mΩ/m at 20 °C, there and back at 60 °C: 1.805 Ω, so that 23.76 V drive 13.16 A. */
    private static final double WAY = 2 * 0.026 * 30 * (1 + 0.00393 * 40);

    private static final double SOURCE = 24 * 0.99;

    private static final OutputProtection ELECTRONIC = protection("e4", 60, ProtectionKind.ELECTRONIC, 4, 6);
    private static final OutputProtection FUSE = protection("f4", 10, ProtectionKind.FUSE, 4, 12);
    private static final OutputProtection BREAKER = protection("b4", 5, ProtectionKind.CIRCUIT_BREAKER, 4, 40);

    private static ControlSupply strong(double rated, @Nullable OverloadCurrent overload) {
        return overloaded(supply("s", 100, rated), overload);
    }

    private static ControlSupply overloaded(ControlSupply s, @Nullable OverloadCurrent overload) {
        return Copies.with(s, "overload", overload);
    }

    private static ControlPowerResult size(
            ControlSupply supply, List<OutputProtection> protections, double length, ControlNode... nodes) {
        return new ControlPowerSizing().size(request(supply, protections, length, nodes));
    }

    private static ControlPowerRequest request(
            ControlSupply supply, List<OutputProtection> protections, double length, ControlNode... nodes) {
        return new ControlPowerRequest(
                spec(0.2, true),
                SITE,
                MAINS,
                List.of(nodes),
                List.of(supply),
                List.of(cable("c", 10, length, "0.75 mm2")),
                protections,
                List.of());
    }

    private static List<FindingCode> codes(ControlPowerResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    /** The breaker would be cheapest, but 40 A never flow; 13.16 A suffice for the fuse's 12 A, and the supply gives 20 A. */
    @Test
    void theCheapestThatOpensAtTheFarEnd() {
        var result = size(strong(20, null), List.of(ELECTRONIC, FUSE, BREAKER), 30, node("g", "p", 1, null, 10));
        var circuit = result.circuits().getFirst();
        assertThat(circuit.item()).isEqualTo("f4");
        assertThat(circuit.farthest()).isEqualTo("g");
        assertThat(circuit.loopResistance().si()).isCloseTo(WAY, within(1e-9));
        assertThat(circuit.faultCurrent().si()).isCloseTo(SOURCE / WAY, within(1e-9));
        assertThat(circuit.clearingTime()).isEqualTo(new Time(0.1));
        assertThat(result.findings()).isEmpty();
    }

    /** A supply that gives no more than its 8 A opens only the electronic one; with 15 A for 0.2 s the fuse again, in 0.1 s. */
    @Test
    void whatTheSupplyGivesDecides() {
        var all = List.of(ELECTRONIC, FUSE, BREAKER);
        var node = node("g", "p", 1, null, 10);
        assertThat(size(strong(8, null), all, 30, node).circuits().getFirst()).satisfies(circuit -> {
            assertThat(circuit.item()).isEqualTo("e4");
            assertThat(circuit.faultCurrent()).isEqualTo(new Current(8));
        });
        var longer = new OverloadCurrent(new Current(15), new Time(0.2));
        assertThat(size(strong(8, longer), all, 30, node).circuits().getFirst().item())
                .isEqualTo("f4");
        // not for as long as the fuse takes
        var shorter = new OverloadCurrent(new Current(15), new Time(0.05));
        assertThat(size(strong(8, shorter), all, 30, node).circuits().getFirst().item())
                .isEqualTo("e4");
    }

    /** 40 m leave 9.87 A, below the fuse's 12 A. */
    @Test
    void tooLongACableKeepsTheFuseClosed() {
        var result = size(strong(20, null), List.of(FUSE), 40, node("g", "p", 1, null, 10));
        assertThat(codes(result)).containsExactly(FindingCode.CONTROL_OUTPUT_NOT_CLEARED);
        Finding finding = result.findings().getFirst();
        assertThat(finding.subject()).isEqualTo("g");
        assertThat(finding.value())
                .isInstanceOfSatisfying(
                        Current.class,
                        value -> assertThat(value.si()).isCloseTo(SOURCE / (WAY * 40 / 30), within(1e-9)));
        assertThat(finding.limit()).isEqualTo(new Current(12));
        assertThat(result.circuits().getFirst().clearingTime()).isNull();
    }

    /** 40 m of 0.75 mm² leave too little for the fuse; 1.5 mm² has 13.3 mΩ/m (IEC 60228:2004 Table 3, class 5). */
    @Test
    void aThickerCableLetsTheFuseOpen() {
        var result = new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        spec(0.2, true),
                        SITE,
                        MAINS,
                        List.of(node("g", "p", 1, null, 10)),
                        List.of(strong(20, null)),
                        List.of(cable("thin", 10, 40, "0.75 mm2"), cable("thick", 20, 40, "1.5 mm2")),
                        List.of(FUSE),
                        List.of()));
        assertThat(result.links().getFirst().item()).isEqualTo("thick");
        assertThat(result.circuits().getFirst().clearingTime()).isEqualTo(new Time(0.1));
        assertThat(result.circuits().getFirst().faultCurrent().si())
                .isCloseTo(SOURCE / (2 * 0.0133 * 40 * (1 + 0.00393 * 40)), within(1e-9));
        assertThat(result.findings()).isEmpty();
    }

    /** Two chains: what one takes the other's fault does not get. 12.2 A less 6 W/23 V are below the fuse's 12 A. */
    @Test
    void otherCircuitsTakeTheirShare() {
        var alone = size(strong(12.2, null), List.of(FUSE), 30, node("g", "p", 1, null, 10));
        assertThat(codes(alone)).isEmpty();
        var two = size(strong(12.2, null), List.of(FUSE), 30, node("g", "p", 1, null, 10), node("h", "q", 1, null, 10));
        // each gets a supply of its own, dearer but sound
        assertThat(codes(two)).isEmpty();
        assertThat(two.supplies()).hasSize(2);
    }

    @Test
    void aDeviceTooSmallForItsChain() {
        var result = size(
                strong(20, null),
                List.of(protection("small", 5, ProtectionKind.ELECTRONIC, 0.5, 0.7)),
                30,
                node("g", "p", 1, null, 10, load("x", 0, 20, null)));
        assertThat(codes(result)).containsExactly(FindingCode.CONTROL_OUTPUT_RATING);
    }

    /** 0.75 mm² carries 8.5 A as multicore in conduit (IEC 60204-1:2016 Table 6, B2, at 40 °C). */
    @Test
    void aDeviceTooLargeForItsConductor() {
        var result = size(
                strong(20, null),
                List.of(protection("large", 5, ProtectionKind.ELECTRONIC, 10, 12)),
                30,
                node("g", "p", 1, null, 10));
        assertThat(codes(result)).containsExactly(FindingCode.CONTROL_OUTPUT_CONDUCTOR);
        assertThat(result.findings().getFirst().limit()).isEqualTo(new Current(8.5));
    }

    /**
     * NFPA 79 Table 12.5.1: of 0.75 mm² the next thinner gauge counts, 20 AWG (0.518 mm²) with 5 A; at 40 °C the 60 °C column is
     * worth 0.82 (Table 310.15(B)(1)(1)): 4.1 A.
     */
    @Test
    void theCodeOfTheOtherMarketHasItsOwnTable() {
        var request = Copies.with(
                request(
                        strong(20, null),
                        List.of(protection("large", 5, ProtectionKind.ELECTRONIC, 10, 12)),
                        30,
                        node("g", "p", 1, null, 10)),
                "codeBasis",
                CodeBasis.NFPA_79);
        var finding = new ControlPowerSizing().size(request).findings().getFirst();
        assertThat(finding.code()).isEqualTo(FindingCode.CONTROL_OUTPUT_CONDUCTOR);
        assertThat(finding.clause()).contains("12.5.1");
        assertThat(Objects.requireNonNull(finding.limit()).si()).isCloseTo(4.1, within(1e-12));
        assertThat(ConductorLoad.of(CodeBasis.NFPA_79, new ConductorSize("18 AWG"), SITE.ambient())
                        .orElseThrow()
                        .si())
                .isCloseTo(7 * 0.82, within(1e-12));
        assertThat(ConductorLoad.of(CodeBasis.NFPA_79, new ConductorSize("30 AWG"), SITE.ambient()))
                .isEmpty(); // no value in the 60 °C column
    }

    @Test
    void withoutAnyInTheCatalogueThatIsSaid() {
        var result = size(strong(20, null), List.of(), 30, node("g", "p", 1, null, 10));
        assertThat(codes(result)).containsExactly(FindingCode.CONTROL_OUTPUT_UNPROTECTED);
        assertThat(result.circuits()).isEmpty();
    }
}
