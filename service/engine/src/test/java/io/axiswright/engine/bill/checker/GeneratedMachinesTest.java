package io.axiswright.engine.bill.checker;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.DemandBasis;
import io.axiswright.engine.catalogue.DemandRule;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.PriceBreak;
import io.axiswright.engine.catalogue.SaleTerms;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Host;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.design.SpareRule;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.study.TestCell;
import io.axiswright.engine.topology.LayoutEffort;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The closing check of generated machines, held against a checker that knows nothing of how bills are made. */
class GeneratedMachinesTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    @Test
    void everyPortIsUsedOrSpareAndEveryCableHasBothEnds() {
        check(0, 300);
    }

    @Test
    @Tag("slow")
    void soItIsForTenThousandMachines() {
        check(300, 10_300);
    }

    private static void check(int fromSeed, int toSeed) {
        int joined = 0;
        for (int seed = fromSeed; seed < toSeed; seed++) {
            var random = new SplittableRandom(seed);
            Catalogue catalogue = catalogue(random);
            Design design = design(random);
            var answer = STUDY.system(new StudyRequest(TestCell.request(1).codeBasis(), catalogue, design));
            if (!answer.topology().gateways().isEmpty()) {
                joined++;
                assertThat(new BillChecker(design, catalogue, answer).complaints())
                        .as("seed %d", seed)
                        .isEmpty();
            }
        }
        // a generator that makes nothing but machines without a layout would show nothing
        assertThat(joined).isGreaterThan((toSeed - fromSeed) / 2);
    }

    /** The answer of one machine and catalogue held against a gateway with a port more, other terms, and no rules of spares. */
    @Test
    void theCheckerComplainsOfWhatDoesNotFit() {
        var request = TestCell.request(3);
        Design d = request.design();
        var ruled = Copies.with(d, "spares", List.of(new SpareRule(ItemKind.GATEWAY, null, null)));
        var answer = STUDY.system(new StudyRequest(request.codeBasis(), request.catalogue(), ruled));

        assertThat(new BillChecker(ruled, request.catalogue(), answer).complaints())
                .isEmpty();
        assertThat(new BillChecker(d, request.catalogue(), answer).complaints())
                .singleElement()
                .asString()
                .startsWith("spares");
        assertThat(new BillChecker(ruled, catalogue(new SplittableRandom(1)), answer).complaints())
                .anyMatch(complaint -> complaint.startsWith("drive ports of G1"))
                .anyMatch(complaint -> complaint.contains("ordered"));
    }

    /** Gateways of two ports coupled in rows of three: trunk ports are used and no trunk cable is bought. */
    @Test
    void coupledGatewaysAreJoinedWithoutACable() {
        var request = TestCell.request(8);
        Catalogue c = request.catalogue();
        GatewayType gateway = Copies.with(Copies.with(c.gateways().getFirst(), "drivePorts", 2), "directRow", 3);
        var catalogue = Copies.with(c, "gateways", List.of(gateway));
        Network n = Objects.requireNonNull(request.design().network());
        Place panel = n.places().getFirst();
        var network = Copies.with(n, "places", List.of(new Place(panel.id(), panel.position(), 4)));
        Design design = Copies.with(request.design(), "network", network);

        var answer = STUDY.system(new StudyRequest(request.codeBasis(), catalogue, design));

        assertThat(answer.topology().gateways())
                .extracting(placed -> placed.linkCable() == null)
                .containsExactly(false, true, true, false);
        assertThat(new BillChecker(design, catalogue, answer).complaints()).isEmpty();
    }

    private static ReservedAxis reserved(SplittableRandom random) {
        return new ReservedAxis(
                "to come",
                random.nextInt(1, 4),
                position(random),
                null,
                null,
                null,
                null,
                null,
                new Frequency(250),
                new Current(0.5));
    }

    /** One to ten axes scattered over 20 m, up to four places and three host ports, rules of spares or none. */
    private static Design design(SplittableRandom random) {
        int axes = random.nextInt(1, 11);
        Design d = TestCell.design(axes);
        Network n = Objects.requireNonNull(d.network());
        var network = new Network(
                new Host(
                        position(random),
                        IntStream.range(0, random.nextInt(1, 4))
                                .mapToObj(k -> new HostPort("port-" + k, new Frequency(50000)))
                                .toList()),
                IntStream.range(0, random.nextInt(1, 5))
                        .mapToObj(k -> new Place("panel-" + k, position(random), random.nextInt(1, 4)))
                        .toList(),
                n.route(),
                null,
                null,
                null,
                null);
        if (random.nextInt(3) == 0) {
            network = Copies.with(network, "reserved", List.of(reserved(random)));
        }
        var spares = new ArrayList<SpareRule>();
        if (random.nextBoolean()) {
            spares.add(new SpareRule(ItemKind.GATEWAY, random.nextInt(0, 11) / 10.0, null));
        }
        if (random.nextBoolean()) {
            spares.add(new SpareRule(ItemKind.CABLE_ASSEMBLY, null, random.nextInt(1, 4)));
        }
        return Copies.with(
                Copies.with(
                        Copies.with(
                                d,
                                "axes",
                                d.axes().stream()
                                        .map(axis -> at(position(random), axis))
                                        .toList()),
                        "network",
                        network),
                "spares",
                spares);
    }

    private static Axis at(Position position, Axis a) {
        return new Axis(
                a.id(),
                a.description(),
                a.mechanism(),
                a.gears(),
                a.couplingInertia(),
                a.cycle(),
                position,
                a.stopZone(),
                a.busGroup(),
                a.commandRate(),
                a.drive(),
                a.mounting());
    }

    private static Position position(SplittableRandom random) {
        return new Position(new Length(random.nextInt(0, 200) / 10.0), new Length(0), new Length(1));
    }

    /** The catalogue of the test cell with gateways of one to eight drive ports, and terms of some gateways and cables. */
    private static Catalogue catalogue(SplittableRandom random) {
        Catalogue c = TestCell.catalogue();
        GatewayType g = c.gateways().getFirst();
        var gateway = new GatewayType(
                g.id(),
                g.description(),
                g.price(),
                g.needs(),
                random.nextInt(1, 9),
                random.nextInt(1, 5),
                g.brakeOutputs(),
                g.stopScope(),
                g.ownPower(),
                g.minimumVoltage(),
                g.passThroughCurrent());
        var terms = new ArrayList<SaleTerms>();
        c.cableAssemblies().stream()
                .filter(_ -> random.nextInt(3) == 0)
                .forEach(cable -> terms.add(terms(cable.id(), random)));
        terms.add(terms(g.id(), random));
        terms.add(terms("rail", random));
        return Copies.with(
                Copies.with(
                        Copies.with(Copies.with(c, "gateways", List.of(gateway)), "saleTerms", terms),
                        "demandRules",
                        rules(random)),
                "accessories",
                Stream.concat(
                                c.accessories().stream(),
                                Stream.of("label", "clip").map(id -> new Accessory(id, id, money(random), List.of())))
                        .toList());
    }

    /** Rules that bring accessories of two kinds, which nothing counts, and rails, guards and devices, which cables do not need. */
    private static List<DemandRule> rules(SplittableRandom random) {
        var rules = new RandomRules(random);
        var ends = List.of("label", "clip", "guard", "rail");
        var made = new ArrayList<DemandRule>();
        for (DemandBasis per : List.of(DemandBasis.MACHINE, DemandBasis.AXIS, DemandBasis.CIRCUIT)) {
            for (int k = random.nextInt(3); k > 0; k--) {
                made.add(rules.of(per, ends));
            }
        }
        made.add(rules.counting(DemandBasis.LENGTH, ItemKind.BULK_CABLE, ends));
        made.add(rules.counting(DemandBasis.LENGTH, ItemKind.CABLE_ASSEMBLY, ends));
        made.add(rules.counting(DemandBasis.ITEM, ItemKind.PROTECTIVE_DEVICE, List.of("guard", "label")));
        made.add(rules.counting(DemandBasis.ITEM, "rail", List.of("clip", "label")));
        return made;
    }

    private static SaleTerms terms(String item, SplittableRandom random) {
        int from = random.nextInt(2, 12);
        return new SaleTerms(
                item,
                random.nextInt(1, 6),
                random.nextInt(1, 12),
                List.of(
                        new PriceBreak(from, money(random)),
                        new PriceBreak(from + random.nextInt(1, 10), money(random))),
                new Mass(random.nextInt(1, 50) / 10.0),
                null);
    }

    private static Money money(SplittableRandom random) {
        return new Money(BigDecimal.valueOf(random.nextInt(1, 30000), 3), "EUR");
    }

    /** Of the bill's package the checker may know the answer, and nothing that makes it. */
    @Test
    void theCheckerKnowsNoClassThatMakesBills() {
        classes()
                .that()
                .haveSimpleName("BillChecker")
                .should()
                .onlyDependOnClassesThat(DescribedPredicate.describe(
                        "are answers, designs or catalogues",
                        type -> !type.getPackageName().equals("io.axiswright.engine.bill")
                                || type.isRecord()
                                || type.isEnum()))
                .check(new ClassFileImporter().importPackages("io.axiswright.engine.bill.checker"));
    }
}
