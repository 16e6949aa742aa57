package io.axiswright.engine.study;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.bill.CutList;
import io.axiswright.engine.bill.CutPiece;
import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableEnd;
import io.axiswright.engine.catalogue.CableEndKind;
import io.axiswright.engine.catalogue.CableGland;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.SupplyDisconnector;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CableRoute;
import io.axiswright.engine.design.Conduit;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.DesignCheck;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.Trunking;
import io.axiswright.engine.design.Wiring;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.LayoutMethod;
import io.axiswright.engine.wiring.CableEntry;
import io.axiswright.engine.wiring.FieldEnd;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * The wiring of the test cell: axes 2 m apart on a line, the first at the mains panel; its one panel 7 m along. Ways are
 * rectilinear times 1.1 plus 0.3 m at each end.
 */
class BillOfWiringTest {

    private static final Set<CableUse> NETWORK =
            Set.of(CableUse.HOST, CableUse.TRUNK, CableUse.SPUR, CableUse.CONTROL_SUPPLY);

    private static StudyResult study(List<Axis> axes, @Nullable Wiring wiring, Catalogue catalogue) {
        Design d = TestCell.design(axes.size());
        return SystemStudy.with(LayoutEffort.HEURISTIC)
                .system(new StudyRequest(
                        TestCell.request(1).codeBasis(),
                        catalogue,
                        Copies.with(Copies.with(d, "axes", axes), "wiring", wiring)));
    }

    private static Catalogue stocked() {
        Catalogue c = TestCell.catalogue();
        return Copies.with(
                Copies.with(
                        c,
                        "cableGlands",
                        List.of(new CableGland(
                                "gland", "gland", null, List.of(), new Length(0.005), new Length(0.02), null))),
                "disconnectors",
                List.of(new SupplyDisconnector(
                        "switch",
                        "main switch",
                        null,
                        List.of(),
                        4,
                        new Voltage(690),
                        new Current(100),
                        new Current(300))));
    }

    private static Axis onBus(Axis a) {
        return new Axis(
                a.id(),
                a.description(),
                a.mechanism(),
                a.gears(),
                a.couplingInertia(),
                a.cycle(),
                a.position(),
                a.stopZone(),
                "bus",
                a.commandRate(),
                a.drive(),
                a.mounting());
    }

    private static double quantity(StudyResult result, String item) {
        return result.billOfMaterials().required().lines().stream()
                .filter(line -> line.item().equals(item))
                .map(BillLine::quantity)
                .mapToDouble(Number::doubleValue)
                .sum();
    }

    /** Three units in a row: two links over 2 m, 2 · 1.1 + 2 · 0.3 = 2.8 m, for which cables of 3 m are the shortest. */
    @Test
    void theUnitsOfABusAreJoinedOneToTheNext() {
        StudyResult result = study(
                List.of(0, 1, 2).stream()
                        .map(TestCell::axis)
                        .map(BillOfWiringTest::onBus)
                        .toList(),
                null,
                stocked());
        int braking = result.braking().groups().getFirst().chosen() == null
                ? 0
                : result.braking().groups().getFirst().chosen().count();
        assertThat(quantity(result, "bus_link-3")).isEqualTo(2);
        assertThat(quantity(result, "bus_link-1")).isEqualTo(braking); // beside the first unit: 0.6 m
        assertThat(quantity(result, "braking_resistor-1")).isEqualTo(braking);
        assertThat(result.billOfMaterials().closing().closes()).isTrue();
    }

    /** The gateway stands at the control supplies, so the stop demand needs 2 · 0.3 m; from nowhere else. */
    @Test
    void theStopDemandGoesToTheGatewayWhoseInputItIs() {
        StudyResult result = study(List.of(TestCell.axis(0), TestCell.axis(1)), null, stocked());
        assertThat(result.topology().gateways()).hasSize(1);
        assertThat(quantity(result, "stop_signal-1")).isEqualTo(1);
    }

    /** Where no bus link reaches 2.8 m, two of 2 m are joined, and the bill closes with the coupler between them. */
    @Test
    void busLinksAreJoinedOnALongWay() {
        Catalogue stocked = stocked();
        List<CableAssembly> cables = stocked.cableAssemblies().stream()
                .filter(c -> c.use() != CableUse.BUS_LINK)
                .collect(Collectors.toCollection(ArrayList::new));
        CableAssembly any = stocked.cableAssemblies().stream()
                .filter(c -> c.use() == CableUse.BUS_LINK)
                .findFirst()
                .orElseThrow();
        cables.add(Copies.with(
                Copies.with(Copies.with(any, "id", "link-2"), "length", new Length(2)), "coupler", "bus coupler"));
        List<Accessory> accessories = new ArrayList<>(stocked.accessories());
        accessories.add(new Accessory("bus coupler", "coupler", null, List.of()));
        StudyResult result = study(
                Stream.of(0, 1).map(TestCell::axis).map(BillOfWiringTest::onBus).toList(),
                null,
                Copies.with(Copies.with(stocked, "cableAssemblies", cables), "accessories", accessories));
        assertThat(quantity(result, "bus coupler")).isEqualTo(1);
        assertThat(quantity(result, "link-2")).isGreaterThanOrEqualTo(2);
        assertThat(result.billOfMaterials().closing().closes()).isTrue();
        assertThat(result.billOfMaterials().connections().gaps()).isEmpty();
    }

    /**
     * Cables of the network and of 24 V end at 6 m. Host and first axis are 7 m from the panel, 7 · 1.1 + 2 · 0.3 = 8.3 m: a cable of 3 m
     * (35.00) and one of 6 m (50.00) with a coupler (9.00). The second axis is 5 m off, 6.1 m: 1 m (25.00), 6 m and a coupler are cheaper
     * than two of 6 m, and than 3 and 6. The control supply stands in the panel: 0.6 m, one of 1 m.
     */
    @Test
    void networkCablesAreJoinedOnALongWay() {
        StudyResult result = study(List.of(TestCell.axis(0), TestCell.axis(1)), null, coupled(stocked(), 6, 20));
        assertThat(quantity(result, "spur-1")).isEqualTo(1);
        assertThat(quantity(result, "spur-3")).isEqualTo(1);
        assertThat(quantity(result, "spur-6")).isEqualTo(2);
        assertThat(quantity(result, "host-3")).isEqualTo(1);
        assertThat(quantity(result, "host-6")).isEqualTo(1);
        assertThat(quantity(result, "control_supply-1")).isEqualTo(1);
        assertThat(quantity(result, "joint")).isEqualTo(3);
        assertThat(requireNonNull(result.topology().cost()).amount())
                .isEqualByComparingTo(requireNonNull(
                                TestCell.catalogue().gateways().getFirst().price())
                        .amount()
                        .add(new BigDecimal("272")));
        assertThat(result.topology().method()).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
        assertThat(result.findings())
                .filteredOn(finding -> finding.code() == FindingCode.TOPOLOGY_CABLES_JOINED)
                .extracting(finding -> requireNonNull(finding.value()).si())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
                .containsExactlyInAnyOrder(8.3, 8.3, 6.1);
        assertThat(result.billOfMaterials().closing().closes()).isTrue();
        assertThat(result.billOfMaterials().connections().gaps()).isEmpty();
    }

    /** An axis at 500 m, which nothing reaches: the cables of the others are on the bill, and what is missing is said. */
    @Test
    void oneAxisOutOfReachLeavesTheOthersTheirCables() {
        List<Axis> axes = List.of(TestCell.axis(0), TestCell.axis(1), TestCell.axis(2));
        Axis far = Copies.with(axes.get(2), "position", new Position(new Length(500), new Length(0), new Length(0)));
        StudyResult result = study(List.of(axes.get(0), axes.get(1), far), null, stocked());
        StudyResult without = study(axes.subList(0, 2), null, stocked());

        assertThat(result.topology().unconnected()).containsExactly("axis-2");
        assertThat(result.topology().gateways()).isEqualTo(without.topology().gateways());
        for (CableUse use : List.of(CableUse.HOST, CableUse.SPUR, CableUse.CONTROL_SUPPLY)) {
            assertThat(network(result, use)).isNotEmpty().isEqualTo(network(without, use));
        }
        assertThat(result.billOfMaterials().findings())
                .filteredOn(finding -> finding.code() == FindingCode.BILL_AXIS_UNCONNECTED)
                .extracting(Finding::subject)
                .containsExactly("axis-2");
        assertThat(result.billOfMaterials().findings())
                .extracting(Finding::code)
                .contains(FindingCode.TOPOLOGY_SPUR_TOO_LONG)
                .doesNotContain(FindingCode.BILL_NETWORK_MISSING);
        assertThat(result.billOfMaterials().connections().gaps())
                .singleElement()
                .asString()
                .contains("axis-2");
    }

    /**
     * Spurs with ends of 30 mm, which every gland passes. That of the first axis runs through a conduit of 25 mm, that of the second through
     * trunking, and that of the gateway's host cable, which has no moulded ends, through the conduit too: one end is made anew.
     */
    @Test
    void mouldedEndsAreHeldAgainstTheConduitOfTheirRoute() {
        Catalogue stocked = stocked();
        var end = new CableEnd(CableEndKind.MOULDED, new Length(0.03), null, null, null);
        List<CableAssembly> cables = stocked.cableAssemblies().stream()
                .map(c -> c.use() == CableUse.SPUR ? Copies.with(c, "ends", List.of(end, end)) : c)
                .toList();
        CableRoute conduit = new CableRoute(
                "conduit", List.of(), false, false, new Conduit(new Length(0.025)), null, null, false, List.of(), null);
        Design d = TestCell.design(2);
        var routes = List.of(
                Copies.with(
                        Copies.with(conduit, "axisAssemblies", List.of("axis-0")),
                        "placeAssemblies",
                        List.of("panel-0")),
                Copies.with(
                        Copies.with(
                                Copies.with(conduit, "id", "trunking"),
                                "containment",
                                new Trunking(new Length(0.02), new Length(0.02), true)),
                        "axisAssemblies",
                        List.of("axis-1")));
        StudyResult result = SystemStudy.with(LayoutEffort.HEURISTIC)
                .system(new StudyRequest(
                        TestCell.request(1).codeBasis(),
                        Copies.with(
                                Copies.with(stocked, "cableAssemblies", cables),
                                "cableGlands",
                                List.of(Copies.with(stocked.glandStock().getFirst(), "bore", new Length(0.04)))),
                        Copies.with(
                                d,
                                "installation",
                                Copies.with(requireNonNull(d.installation()), "cableRoutes", routes))));

        assertThat(result.billOfMaterials().findings())
                .filteredOn(finding -> finding.code() == FindingCode.BILL_CABLE_END_CONDUIT)
                .extracting(Finding::pointer)
                .containsExactly("/design/installation/cableRoutes/0/containment");
        assertThat(result.billOfMaterials().fieldEnds())
                .extracting(FieldEnd::asker, FieldEnd::rework)
                .containsExactly(tuple("axis axis-0", true));
    }

    private static Map<String, BigDecimal> network(StudyResult result, CableUse use) {
        return result.billOfMaterials().required().lines().stream()
                .filter(line -> line.item().startsWith(use.name().toLowerCase(Locale.ROOT)))
                .collect(Collectors.toMap(BillLine::item, BillLine::quantity));
    }

    /** Without cables of the network and of 24 V longer than that; those left may be joined. */
    private static Catalogue coupled(Catalogue stocked, double longest, double joined) {
        List<CableAssembly> cables = stocked.cableAssemblies().stream()
                .filter(c -> !NETWORK.contains(c.use()) || c.length().si() <= longest)
                .map(c -> NETWORK.contains(c.use())
                        ? Copies.with(Copies.with(c, "coupler", "joint"), "joinedLength", new Length(joined))
                        : c)
                .toList();
        List<Accessory> accessories = new ArrayList<>(stocked.accessories());
        accessories.add(new Accessory("joint", "coupler", new Money(new BigDecimal("9.00"), "EUR"), List.of()));
        return Copies.with(Copies.with(stocked, "cableAssemblies", cables), "accessories", accessories);
    }

    /** One axis at the mains panel: the spur enters the gateway's panel, host cable, feeder and mains of the supply theirs. */
    @Test
    void everyCableThatEntersAnEnclosureHasItsGland() {
        StudyResult closed = study(List.of(TestCell.axis(1)), null, stocked());
        StudyResult open = study(List.of(TestCell.axis(1)), new Wiring(List.of("panel-0"), null, null), stocked());
        assertThat(closed.billOfMaterials().cableEntries())
                .extracting(CableEntry::enclosure)
                .contains("the mains panel", "panel-0");
        assertThat(open.billOfMaterials().cableEntries())
                .extracting(CableEntry::enclosure)
                .containsOnly("the mains panel");
        assertThat(quantity(closed, "gland"))
                .isEqualTo(closed.billOfMaterials().cableEntries().size());
        // the feeder and the cables of the drive unit and of the control supply leave or enter the mains panel
        assertThat(open.billOfMaterials().cableEntries()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(quantity(closed, "switch")).isEqualTo(1);
    }

    @Test
    void aCatalogueWithoutGlandsAndSwitchesIsToldWhatItLacks() {
        StudyResult result = study(List.of(TestCell.axis(1)), null, TestCell.catalogue());
        assertThat(result.findings())
                .extracting(Finding::code)
                .contains(FindingCode.BILL_GLAND_NONE, FindingCode.BILL_DISCONNECTOR_NONE);
        assertThat(result.buildable()).isTrue();
    }

    /**
     * Four axes with every power cable on reels of 100 m: each run from the panel is a piece of its own that leads to its load, and
     * the pieces are the lengths that the same bill without reels asks for.
     */
    @Test
    void powerCableFromReelsIsCutForEachLoad() {
        List<Axis> axes = List.of(0, 1, 2, 3).stream().map(TestCell::axis).toList();
        BillResult loose = study(axes, null, stocked()).billOfMaterials();
        StudyResult result = study(axes, null, reeled(stocked()));
        BillResult bill = result.billOfMaterials();

        assertThat(loose.cutLists()).isEmpty();
        assertThat(bill.cutLists()).isNotEmpty();
        for (CutList cuts : bill.cutLists()) {
            List<CutPiece> pieces =
                    cuts.reels().stream().flatMap(r -> r.pieces().stream()).toList();
            assertThat(pieces).extracting(CutPiece::asker).allMatch(asker -> asker.startsWith("circuit "));
            assertThat(line(bill, cuts.line()).quantity().doubleValue())
                    .isEqualTo(100.0 * cuts.reels().size());
            // each piece is rounded up to a centimetre by itself
            assertThat(pieces.stream().mapToDouble(p -> p.length().si()).sum())
                    .isCloseTo(line(loose, cuts.line()).quantity().doubleValue(), within(0.01 * pieces.size()));
        }
        assertThat(bill.cutLists().stream()
                        .flatMap(cuts -> cuts.reels().stream())
                        .flatMap(r -> r.pieces().stream())
                        .map(CutPiece::pointer))
                .contains("/design/axes/1", "/design/axes/2", "/design/axes/3");
        assertThat(bill.closing().closes()).isTrue();
    }

    private static BillLine line(BillResult bill, String id) {
        return bill.required().lines().stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Catalogue reeled(Catalogue c) {
        return Copies.with(
                c,
                "bulkCables",
                c.bulkCables().stream()
                        .map(b -> new BulkCable(
                                b.id(),
                                b.description(),
                                b.price(),
                                b.needs(),
                                b.size(),
                                b.cores(),
                                b.insulation(),
                                b.outerDiameter(),
                                b.flexible(),
                                new Length(100),
                                new Length(0.2),
                                null))
                        .toList());
    }

    @Test
    void placesOfTheWiringMustExist() {
        Design d = TestCell.design(1);
        var wrong = Copies.with(d, "wiring", new Wiring(List.of("panel-0", "attic"), "cellar", null));
        assertThat(DesignCheck.faults(wrong, "/design"))
                .extracting(Fault::pointer)
                .containsExactly("/design/wiring/openPlaces/1", "/design/wiring/stopPlace");
    }
}
