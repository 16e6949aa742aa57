package io.axiswright.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableEnd;
import io.axiswright.engine.catalogue.CableEndKind;
import io.axiswright.engine.catalogue.CableGland;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.catalogue.SupplyDisconnector;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.Disconnect;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Each choice can be told at sight from the data beside it. */
class WiringChoiceTest {

    private static final CableEnd LOOSE = new CableEnd(CableEndKind.LOOSE, null, null, null, null);
    private static final CableGland SMALL = gland("small", "2", 4, 10, 12);
    private static final CableGland LARGE = gland("large", "3", 9, 15, 18);
    private static final CableGland SPLIT = gland("split", "20", 6, 12, 25);

    private static CableGland gland(String id, String price, double above, double upTo, double bore) {
        return new CableGland(id, id, eur(price), List.of(), mm(above), mm(upTo), mm(bore));
    }

    private static CableEnd moulded(double width, @Nullable String parts, @Nullable String tool) {
        return new CableEnd(CableEndKind.MOULDED, mm(width), parts, tool, new Time(600));
    }

    private static CableRun run(String item, double diameter, List<CableEnd> ends, String... enclosures) {
        return new CableRun("axis a", item, mm(diameter), ends, List.of(enclosures), "/design/axes/0");
    }

    private static WiringResult bringIn(List<CableGland> glands, CableRun... runs) {
        return new WiringChoice()
                .choose(new WiringRequest(
                        List.of(),
                        List.of(runs),
                        null,
                        null,
                        Map.of(),
                        List.of(),
                        List.of(),
                        glands,
                        List.of(),
                        CatalogueSource.SENT));
    }

    /**
     * A moulded end of 15 mm passes the split gland (25 mm) and a conduit of 16 mm, but not one of 14 mm: it is cut off and made anew with the
     * parts and tool of its cable. A bare end passes whatever its cable does, and trunking is in nobody's way.
     */
    @Test
    void aMouldedEndHasToPassTheConduitOnItsWay() {
        CableRun plugged = run("spur", 8, List.of(moulded(15, "plug", "crimper"), moulded(20, null, null)), "panel");
        ConduitOnWay wide = new ConduitOnWay("wide", mm(16), "/design/installation/cableRoutes/0/containment");
        ConduitOnWay narrow = new ConduitOnWay("narrow", mm(14), "/design/installation/cableRoutes/1/containment");

        assertThat(drawn(plugged, wide).findings()).isEmpty();
        assertThat(drawn(plugged, wide).fieldEnds()).isEmpty();
        assertThat(drawn(run("spur", 8, List.of(LOOSE, moulded(20, null, null)), "panel"), narrow)
                        .fieldEnds())
                .isEmpty();

        WiringResult result = drawn(plugged, wide, narrow);
        assertThat(result.fieldEnds())
                .containsExactly(new FieldEnd("axis a", "spur", true, "plug", "crimper", new Time(600)));
        assertThat(result.entries()).containsExactly(new CableEntry("axis a", "spur", "panel", "split", mm(15), true));
        assertThat(result.parts()).extracting(WiringPart::item).containsExactly("split", "plug", "crimper");
        assertThat(result.findings())
                .extracting(Finding::code, Finding::subject, Finding::pointer, Finding::value, Finding::limit)
                .containsExactly(tuple(
                        FindingCode.BILL_CABLE_END_CONDUIT,
                        "spur on route narrow",
                        "/design/installation/cableRoutes/1/containment",
                        mm(15),
                        mm(14)));
    }

    private static WiringResult drawn(CableRun run, ConduitOnWay... conduits) {
        return new WiringChoice()
                .choose(new WiringRequest(
                        List.of(),
                        List.of(run),
                        null,
                        null,
                        Map.of("axis a", List.of(conduits)),
                        List.of(),
                        List.of(),
                        List.of(SPLIT),
                        List.of(),
                        CatalogueSource.SENT));
    }

    private static WiringResult join(Join join, CableAssembly... cables) {
        return new WiringChoice()
                .choose(new WiringRequest(
                        List.of(join),
                        List.of(),
                        null,
                        null,
                        Map.of(),
                        List.of(cables),
                        CoupledCables.of(List.of(cables), id -> new Accessory(id, id, null, List.of())),
                        List.of(),
                        List.of(),
                        CatalogueSource.SENT));
    }

    private static CableAssembly link(String id, String price, double length, double voltage, double current) {
        return new CableAssembly(
                id,
                id,
                eur(price),
                List.of(),
                CableUse.BUS_LINK,
                new Length(length),
                null,
                null,
                mm(11),
                new Voltage(voltage),
                new Current(current),
                null);
    }

    private static Join busLink(@Nullable Double route, @Nullable Double longest) {
        return new Join(
                CableUse.BUS_LINK,
                "DC bus b",
                "joins",
                "one",
                "other",
                route == null ? null : new Length(route),
                longest == null ? null : new Length(longest),
                new Voltage(800),
                new Current(10),
                List.of(),
                "/design/axes/1");
    }

    private static Length mm(double value) {
        return new Length(value / 1000);
    }

    private static Money eur(String amount) {
        return new Money(new BigDecimal(amount), "EUR");
    }

    @Test
    void theCheapestGlandThatHoldsTheCableServesABareEnd() {
        var result = bringIn(List.of(SPLIT, LARGE, SMALL), run("cable", 9.5, List.of(), "panel", "box"));
        assertThat(result.parts()).extracting(WiringPart::item).containsExactly("small", "small");
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void holdsOnlyWhatIsThickerThanItsLowerEndAndNotThickerThanItsUpper() {
        assertThat(bringIn(List.of(LARGE), run("c", 9, List.of(), "panel")).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.BILL_GLAND_NONE);
        assertThat(bringIn(List.of(LARGE), run("c", 15, List.of(), "panel")).findings())
                .isEmpty();
    }

    /** 15 mm pass neither 12 nor, on a cable of 8 mm, the large gland, which does not hold it: only the split one is left. */
    @Test
    void aMouldedEndThatDoesNotPassAsksForAWiderGland() {
        var result = bringIn(
                List.of(SMALL, LARGE, SPLIT),
                run("spur", 8, List.of(moulded(15, null, null), moulded(16, null, null)), "panel"));
        assertThat(result.parts()).extracting(WiringPart::item).containsExactly("split");
        assertThat(result.entries()).containsExactly(new CableEntry("axis a", "spur", "panel", "split", mm(15), true));
        assertThat(result.fieldEnds()).isEmpty();
    }

    /**
     * 9 m: cables of 5 m for 30 and of 4 m for 20 with a coupler, and one of 8 m that may not be joined. 4 + 4 = 8 m do not reach, 4 + 5
     * for 50 do, 5 + 5 cost 60. No more than 8.5 m may be laid elsewhere, so nothing serves there.
     */
    @Test
    void twoCablesAreJoinedWhereTheCatalogueLetsThem() {
        CableAssembly[] stock = {
            Copies.with(link("five", "30", 5, 1000, 20), "coupler", "coupler"),
            Copies.with(link("four", "20", 4, 1000, 20), "coupler", "coupler"),
            link("eight", "10", 8, 1000, 20)
        };
        WiringResult result = join(busLink(9.0, null), stock);
        assertThat(result.parts()).extracting(WiringPart::item).containsExactlyInAnyOrder("four", "five", "coupler");
        assertThat(result.joined()).hasSize(2);
        JoinedCable first = result.joined().getFirst();
        JoinedCable second = result.joined().getLast();
        assertThat(first.from()).isEqualTo("one");
        assertThat(first.joined()).isTrue();
        assertThat(second.from()).isEqualTo(first.to());
        assertThat(second.to()).isEqualTo("other");
        assertThat(result.findings())
                .extracting(Finding::code, Finding::value, Finding::limit)
                .containsExactly(tuple(FindingCode.BILL_CABLES_JOINED, new Length(9), new Length(9)));

        assertThat(join(busLink(8.0, null), stock).parts())
                .extracting(WiringPart::item)
                .containsExactly("eight");
        assertThat(join(busLink(9.0, 8.5), stock).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.BILL_BUS_LINK_NONE);
        assertThat(join(busLink(11.0, null), stock).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.BILL_BUS_LINK_NONE);
    }

    @Test
    void theNarrowerEndIsDrawnThroughAllWalls() {
        var result = bringIn(List.of(SMALL), run("spur", 8, List.of(moulded(40, null, null), LOOSE), "panel", "box"));
        assertThat(result.parts()).extracting(WiringPart::item).containsExactly("small", "small");
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void anEndThatPassesNothingIsCutOffAndMadeAnewOnceHoweverManyWallsThereAre() {
        var result = bringIn(
                List.of(SMALL),
                run("spur", 8, List.of(moulded(20, null, null), moulded(20, "plug", "tool")), "panel", "box"));
        assertThat(result.parts())
                .extracting(WiringPart::item, WiringPart::tool)
                .containsExactly(
                        tuple("small", false), tuple("small", false), tuple("plug", false), tuple("tool", true));
        assertThat(result.entries()).noneMatch(CableEntry::passes);
        assertThat(result.fieldEnds())
                .containsExactly(new FieldEnd("axis a", "spur", true, "plug", "tool", new Time(600)));
        assertThat(result.findings())
                .extracting(Finding::code, Finding::value, Finding::limit)
                .containsExactly(tuple(FindingCode.BILL_CABLE_END_TOO_WIDE, mm(20), mm(12)));
    }

    @Test
    void anEndMadeOnTheMachineWithoutPartsOrToolIsACautionSaidOnceForTheCable() {
        var end = new CableEnd(CableEndKind.FIELD_MADE, null, null, null, null);
        var result = bringIn(List.of(SMALL), run("stop", 8, List.of(LOOSE, end)), run("stop", 8, List.of(LOOSE, end)));
        assertThat(result.fieldEnds()).hasSize(2);
        assertThat(result.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.BILL_CABLE_END_PARTS_NONE, FindingCode.BILL_CABLE_END_TOOL_NONE);
    }

    @Test
    void aToolIsOfferedOnceForAllEnds() {
        var end = new CableEnd(CableEndKind.FIELD_MADE, null, "plug", "tool", null);
        var result = bringIn(List.of(), run("stop", 8, List.of(LOOSE, end)), run("stop", 8, List.of(LOOSE, end)));
        assertThat(result.parts()).extracting(WiringPart::item).containsExactly("plug", "tool", "plug");
    }

    @Test
    void theCheapestLinkThatReachesAndBearsVoltageAndCurrentIsTaken() {
        var result = join(
                busLink(2.0, null),
                link("short", "1", 1.9, 850, 20),
                link("low-voltage", "2", 3, 600, 20),
                link("thin", "3", 3, 850, 9),
                link("right", "5", 3, 850, 10),
                link("dear", "6", 2, 850, 20));
        assertThat(result.parts()).extracting(WiringPart::item).containsExactly("right");
    }

    @Test
    void withoutAWayTheShortestIsTakenAndNoneLongerThanAllowed() {
        assertThat(join(busLink(null, null), link("cheap", "1", 5, 850, 20), link("short", "9", 1, 850, 20))
                        .parts())
                .extracting(WiringPart::item)
                .containsExactly("short");
        assertThat(join(busLink(2.0, 3.0), link("long", "1", 5, 850, 20)).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.BILL_BUS_LINK_NONE);
    }

    @Test
    void whatCannotBeJoinedIsSaidForEachUse() {
        for (var use : List.of(CableUse.BRAKING_RESISTOR, CableUse.STOP_SIGNAL)) {
            var asked = new Join(
                    use, "a", "joins", "one", "other", new Length(4), null, null, null, List.of(), "/design/axes/0");
            assertThat(join(asked, link("other", "1", 9, 850, 20)).findings())
                    .extracting(Finding::code, Finding::value, Finding::limit)
                    .containsExactly(tuple(
                            use == CableUse.STOP_SIGNAL
                                    ? FindingCode.BILL_STOP_CABLE_NONE
                                    : FindingCode.BILL_RESISTOR_CABLE_NONE,
                            new Length(4),
                            new Length(0)));
        }
    }

    @Test
    void theDisconnectorBearsPolesVoltageCurrentAndBreakingCurrent() {
        var asked = new Disconnect(3, new Voltage(400), new Current(50), new Current(40));
        var right = disconnector("right", "40", 3, 400, 50, 40);
        assertThat(disconnect(
                                asked,
                                disconnector("poles", "1", 2, 690, 99, 99),
                                disconnector("voltage", "2", 3, 399, 99, 99),
                                disconnector("current", "3", 3, 690, 49, 99),
                                disconnector("breaking", "4", 3, 690, 99, 39),
                                right,
                                disconnector("dear", "50", 4, 690, 99, 99))
                        .parts())
                .extracting(WiringPart::item)
                .containsExactly("right");
        assertThat(disconnect(asked, disconnector("current", "3", 3, 690, 49, 99))
                        .findings())
                .extracting(Finding::code, Finding::value, Finding::limit)
                .containsExactly(tuple(FindingCode.BILL_DISCONNECTOR_NONE, new Current(50), new Current(49)));
    }

    /** Asked for are 3 poles, 400 V, 50 A, and 40 A broken on load; one thing less each time, and a device of its own is bought. */
    @Test
    void aFeederBreakerThatIsolatesSparesTheDisconnector() {
        var spared = disconnect(breaker(DeviceKind.BREAKER, 3, 50, 400, true));

        assertThat(spared.parts()).isEmpty();
        assertThat(spared.findings())
                .extracting(Finding::code, Finding::subject, Finding::value, Finding::limit)
                .containsExactly(
                        tuple(FindingCode.BILL_DISCONNECTOR_SPARED, "breaker", new Current(50), new Current(50)));
        assertThat(List.of(
                        breaker(DeviceKind.BREAKER, 3, 50, 400, null),
                        breaker(DeviceKind.BREAKER, 3, 50, 400, false),
                        breaker(DeviceKind.FUSE, 3, 50, 400, true),
                        breaker(DeviceKind.BREAKER, 2, 50, 400, true),
                        breaker(DeviceKind.BREAKER, 3, 49, 400, true),
                        breaker(DeviceKind.BREAKER, 3, 50, 399, true)))
                .allSatisfy(device -> assertThat(disconnect(device).parts())
                        .extracting(WiringPart::item)
                        .containsExactly("right"));
    }

    private static ProtectiveDevice breaker(
            DeviceKind kind, int poles, double rating, double voltage, @Nullable Boolean isolates) {
        return new ProtectiveDevice(
                "breaker",
                "breaker",
                eur("30"),
                List.of(),
                kind,
                CodeBasis.IEC_60204_1,
                poles,
                new Current(rating),
                new Current(10_000),
                new Voltage(voltage),
                null,
                null,
                isolates,
                null,
                null,
                null);
    }

    private static WiringResult disconnect(ProtectiveDevice feeder) {
        return disconnect(
                new Disconnect(3, new Voltage(400), new Current(50), new Current(40)),
                feeder,
                disconnector("right", "40", 3, 400, 50, 40));
    }

    private static WiringResult disconnect(Disconnect asked, SupplyDisconnector... devices) {
        return disconnect(asked, null, devices);
    }

    private static WiringResult disconnect(
            Disconnect asked, @Nullable ProtectiveDevice feeder, SupplyDisconnector... devices) {
        return new WiringChoice()
                .choose(new WiringRequest(
                        List.of(),
                        List.of(),
                        asked,
                        feeder,
                        Map.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(devices),
                        CatalogueSource.SENT));
    }

    private static SupplyDisconnector disconnector(
            String id, String price, int poles, double voltage, double current, double breaking) {
        return new SupplyDisconnector(
                id,
                id,
                eur(price),
                List.of(),
                poles,
                new Voltage(voltage),
                new Current(current),
                new Current(breaking));
    }
}
