package io.axiswright.engine.containment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CableRoute;
import io.axiswright.engine.design.ClampingRange;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Conduit;
import io.axiswright.engine.design.ConduitType;
import io.axiswright.engine.design.Containment;
import io.axiswright.engine.design.StandardConduit;
import io.axiswright.engine.design.Trunking;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ContainmentCheckTest {

    private static final double INCH = 0.0254;

    private static Length millimetres(double value) {
        return new Length(value * 1e-3);
    }

    private static RoutedCable cable(int k, double diameter, boolean flexible) {
        return new RoutedCable("load-" + k, "C" + k, "cable", millimetres(diameter), flexible, 3);
    }

    private static CableRoute route(
            @Nullable Containment containment,
            @Nullable Length length,
            @Nullable Length bend,
            boolean moving,
            List<Length> others,
            @Nullable ClampingRange gland) {
        return new CableRoute("route", List.of(), false, false, containment, length, bend, moving, others, gland);
    }

    private static ContainmentResult check(CodeBasis basis, CableRoute route, List<RoutedCable> cables) {
        return new ContainmentCheck()
                .check(new ContainmentRequest(basis, List.of(new RoutedStretch("/r/0", route, cables, List.of()))));
    }

    private static ContainmentResult conduit(CodeBasis basis, double inner, @Nullable Length length, double... cables) {
        List<RoutedCable> list = IntStream.range(0, cables.length)
                .mapToObj(k -> cable(k, cables[k], true))
                .toList();
        return check(basis, route(new Conduit(millimetres(inner)), length, null, false, List.of(), null), list);
    }

    /**
     * Steel Tube Institute, conduit fill post 4 (steeltubeinstitute.org/resources/post-4): 3 × 12, 4 × 10 and 8 × 8 AWG THWN take
     * 0.4171 in², so 1 in. EMT with its 0.346 in² is too small and 1-1/4 in. with 0.598 in² is taken: metric designator 35. The
     * outer diameters are those of NFPA 70 Chapter 9 Table 5: 0.130, 0.164 and 0.216 in.
     */
    @Test
    void publishedConduitFill() {
        List<Length> wires = new ArrayList<>(Collections.nCopies(3, new Length(0.130 * INCH)));
        wires.addAll(Collections.nCopies(4, new Length(0.164 * INCH)));
        wires.addAll(Collections.nCopies(8, new Length(0.216 * INCH)));
        var inOneInch = check(
                CodeBasis.NFPA_79,
                route(new StandardConduit(ConduitType.EMT, 27), null, null, false, wires, null),
                List.of());
        RouteUse use = inOneInch.routes().getFirst();
        assertThat(use.smallestConduit()).isEqualTo(35);
        // printed 0.4171 in² of 0.864 in²; the printed areas of the wires are rounded to four places
        assertThat(use.fill()).isCloseTo(0.4171 / 0.864, within(1e-3));
        assertThat(use.fillLimit()).isEqualTo(0.40);
        assertThat(inOneInch.findings()).extracting(Finding::code).containsExactly(FindingCode.CONTAINMENT_OVERFILLED);
        var inNext = check(
                CodeBasis.NFPA_79,
                route(new StandardConduit(ConduitType.EMT, 35), null, null, false, wires, null),
                List.of());
        assertThat(inNext.findings()).isEmpty();
        // printed: 27.9 % of 1.496 in²
        assertThat(inNext.routes().getFirst().fill()).isCloseTo(0.279, within(5e-4));
    }

    /** NFPA 70 Chapter 9 Table 1: 53, 31 and 40 %; in a conduit of 100 mm a cable of √f · 100 mm just fills the share f. */
    @Test
    void oneTwoAndMoreCablesHaveTheirOwnLimits() {
        for (int n : List.of(1, 2, 4)) {
            double share = n == 1 ? 0.53 : n == 2 ? 0.31 : 0.40;
            double just = 100 * Math.sqrt(share / n);
            double[] within = DoubleStream.generate(() -> just * 0.999).limit(n).toArray();
            double[] beyond = DoubleStream.generate(() -> just * 1.001).limit(n).toArray();
            assertThat(conduit(CodeBasis.NFPA_79, 100, null, within).findings()).isEmpty();
            assertThat(conduit(CodeBasis.NFPA_79, 100, null, beyond).findings())
                    .extracting(Finding::code)
                    .containsExactly(FindingCode.CONTAINMENT_OVERFILLED);
            assertThat(conduit(CodeBasis.IEC_60204_1, 100, null, beyond).findings())
                    .extracting(Finding::code)
                    .containsExactly(FindingCode.CONTAINMENT_FILL_HIGH);
        }
    }

    /** Note 4: 60 % for nipples to 24 in, 609.6 mm. Four cables of 38 mm: 4 · 38² / 100² = 57.8 %. */
    @Test
    void aNippleMayBeFuller() {
        double[] cables = {38, 38, 38, 38};
        assertThat(conduit(CodeBasis.NFPA_79, 100, millimetres(609), cables).findings())
                .isEmpty();
        assertThat(conduit(CodeBasis.NFPA_79, 100, millimetres(611), cables).findings())
                .hasSize(1);
    }

    /** 376.22(A): 20 % of wireways. Four cables of 10 mm are 314 mm²: 31.4 % of 25 × 40 mm, 15.7 % of 50 × 40 mm. */
    @Test
    void trunking() {
        List<RoutedCable> cables =
                IntStream.range(0, 4).mapToObj(k -> cable(k, 10, true)).toList();
        var narrow = route(new Trunking(millimetres(25), millimetres(40), true), null, null, false, List.of(), null);
        var wide = route(new Trunking(millimetres(50), millimetres(40), true), null, null, false, List.of(), null);
        assertThat(check(CodeBasis.NFPA_79, narrow, cables).findings())
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo(FindingCode.CONTAINMENT_OVERFILLED))
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/r/0/containment"));
        assertThat(check(CodeBasis.NFPA_79, narrow, cables).routes().getFirst().fill())
                .isCloseTo(0.314, within(1e-3));
        assertThat(check(CodeBasis.NFPA_79, wide, cables).findings()).isEmpty();
        // 45 % in Britain
        assertThat(check(CodeBasis.IEC_60204_1, narrow, cables).findings()).isEmpty();
    }

    /** Whatever the code says, more than all of the inside does not go in. */
    @Test
    void moreThanFullIsAViolationEverywhere() {
        assertThat(conduit(CodeBasis.IEC_60204_1, 10, null, 11).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.CONTAINMENT_OVERFILLED);
    }

    /** Chapter 9 Table 1 note: three cables, conduit 2.8 to 3.2 times as wide as one; fill 3 / 3² = 33 % would pass. */
    @Test
    void threeCablesMayJam() {
        assertThat(conduit(CodeBasis.NFPA_79, 30, null, 10, 10, 10).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.CONTAINMENT_CABLES_JAM);
        assertThat(conduit(CodeBasis.NFPA_79, 33, null, 10, 10, 10).findings()).isEmpty();
        assertThat(conduit(CodeBasis.NFPA_79, 32, null, 10, 10, 10, 1).findings())
                .isEmpty();
    }

    /**
     * DIN VDE 0298-3 (kochkabel.ch, Biegeradien nach DIN VDE): flexible, laid fixed 3 D to 12 mm and 4 D above; in drag chains 4 D
     * to 12 mm and 5 D above; for fixed installation 4 D. NFPA 79, forced guiding (old.egonboehler.at, page 311): 6 D and above
     * 20 mm 8 D.
     */
    @Test
    void bends() {
        bend(CodeBasis.IEC_60204_1, 11, true, false, 33);
        bend(CodeBasis.IEC_60204_1, 15, true, false, 60);
        bend(CodeBasis.IEC_60204_1, 11, true, true, 44);
        bend(CodeBasis.IEC_60204_1, 15, true, true, 75);
        bend(CodeBasis.IEC_60204_1, 15, false, false, 60);
        bend(CodeBasis.NFPA_79, 15, true, true, 90);
        bend(CodeBasis.NFPA_79, 21, true, true, 168);
        bend(CodeBasis.NFPA_79, 26, true, false, 130);
    }

    private static void bend(CodeBasis basis, double diameter, boolean flexible, boolean moving, double least) {
        List<RoutedCable> cables = List.of(cable(0, 5, flexible), cable(1, diameter, flexible));
        var wide = check(basis, route(null, null, millimetres(least + 0.1), moving, List.of(), null), cables);
        var tight = check(basis, route(null, null, millimetres(least - 0.1), moving, List.of(), null), cables);
        assertThat(wide.routes().getFirst().leastBendRadius())
                .satisfies(r -> assertThat(r == null ? 0 : r.si()).isCloseTo(least * 1e-3, within(1e-9)));
        assertThat(wide.findings()).isEmpty();
        assertThat(tight.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo(FindingCode.CONTAINMENT_BEND_TIGHT))
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/r/0/bendRadius"))
                .satisfies(f -> assertThat(f.subject()).startsWith("load-1"));
    }

    /** Made to lie still, in a drag chain. */
    @Test
    void aMovingRouteAsksForFlexibleCables() {
        List<RoutedCable> cables = List.of(cable(0, 5, true), cable(1, 5, false));
        assertThat(check(CodeBasis.IEC_60204_1, route(null, null, null, true, List.of(), null), cables)
                        .findings())
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo(FindingCode.CONTAINMENT_CABLE_STIFF))
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/r/0/moving"))
                .satisfies(f -> assertThat(f.subject()).contains("load-1").doesNotContain("load-0"));
        assertThat(check(CodeBasis.IEC_60204_1, route(null, null, null, false, List.of(), null), cables)
                        .findings())
                .isEmpty();
    }

    @Test
    void glandsHoldWhatIsWithinTheirRange() {
        List<RoutedCable> cables =
                List.of(cable(0, 5.9, true), cable(1, 6, true), cable(2, 12, true), cable(3, 12.1, true));
        var gland = new ClampingRange(millimetres(6), millimetres(12));
        assertThat(check(CodeBasis.IEC_60204_1, route(null, null, null, false, List.of(), gland), cables)
                        .findings())
                .allSatisfy(f -> assertThat(f.code()).isEqualTo(FindingCode.CONTAINMENT_GLAND_MISFIT))
                .extracting(Finding::pointer)
                .containsExactly("/r/0/gland/minimum", "/r/0/gland/maximum");
    }

    @Test
    void whatHasNoCableIsNamed() {
        var stretch = new RoutedStretch(
                "/r/0",
                route(new Conduit(millimetres(50)), null, null, false, List.of(), null),
                List.of(cable(0, 10, true)),
                List.of("x", "y"));
        assertThat(new ContainmentCheck()
                        .check(new ContainmentRequest(CodeBasis.NFPA_79, List.of(stretch)))
                        .findings())
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo(FindingCode.CONTAINMENT_CABLES_UNKNOWN))
                .satisfies(f -> assertThat(f.text()).contains("x, y").contains("2 of the 3"));
    }

    @Test
    void anOpenRouteHasNoFill() {
        RouteUse use = check(
                        CodeBasis.NFPA_79,
                        route(null, null, null, false, List.of(millimetres(8)), null),
                        List.of(cable(0, 10, true), cable(1, 10, true)))
                .routes()
                .getFirst();
        assertThat(use.fill()).isNull();
        assertThat(use.loadedConductors()).isEqualTo(6);
    }

    @Test
    void aSizeThatDoesNotExistIsAFault() {
        var route = route(new StandardConduit(ConduitType.EMT, 30), null, null, false, List.of(millimetres(8)), null);
        assertThatThrownBy(() -> check(CodeBasis.NFPA_79, route, List.of()))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .containsExactly("/r/0/containment/metricDesignator"));
    }
}
