package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.containment.RoutedCable;
import io.axiswright.engine.design.CableRoute;
import io.axiswright.engine.design.ClampingRange;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Containment;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Trunking;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.topology.LayoutEffort;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What runs together is counted from the routes that are stated. */
class CableRoutingTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    private static CableRoute route(
            String id, boolean feeder, @Nullable Containment containment, @Nullable Length length, Integer... axes) {
        return new CableRoute(
                id,
                Arrays.stream(axes).map(k -> "axis-" + k).toList(),
                feeder,
                false,
                containment,
                length,
                null,
                false,
                List.of(),
                null);
    }

    private static StudyRequest request(CodeBasis basis, int grouped, CableRoute... routes) {
        StudyRequest cell = TestCell.request(6);
        Design d = cell.design();
        Installation i = Objects.requireNonNull(d.installation());
        var installation = Copies.with(Copies.with(i, "groupedCircuits", grouped), "cableRoutes", List.of(routes));
        return new StudyRequest(basis, cell.catalogue(), Copies.with(d, "installation", installation));
    }

    /** The grouping factor in the ampacity of the circuit that feeds an axis. */
    private static double factor(StudyResult study, String load) {
        String circuit = study.supply().circuits().stream()
                .filter(c -> c.loads().contains(load))
                .map(BranchCircuit::id)
                .findFirst()
                .orElse(load);
        return study.conductors().derivations().stream()
                .filter(d -> d.subject().equals(circuit) && d.symbol().equals("Iz"))
                .map(d -> Objects.requireNonNull(d.inputs().get("Cg")).si())
                .findFirst()
                .orElseThrow();
    }

    private static double factor(CodeBasis basis, CableRoute... routes) {
        return factor(STUDY.system(request(basis, 1, routes)), "axis-1");
    }

    /** IEC 60204-1 Table D.2, method B2: two 0.80, four 0.65, six 0.57, nine 0.50; between them the next worse row. */
    @Test
    void circuitsTogetherUnderIec() {
        assertThat(factor(CodeBasis.IEC_60204_1)).isEqualTo(1);
        assertThat(factor(CodeBasis.IEC_60204_1, route("a", false, null, null, 1)))
                .isEqualTo(1);
        assertThat(factor(CodeBasis.IEC_60204_1, route("a", false, null, null, 1, 2)))
                .isEqualTo(0.80);
        assertThat(factor(CodeBasis.IEC_60204_1, route("a", true, null, null, 1, 2, 3)))
                .isEqualTo(0.65);
        assertThat(factor(CodeBasis.IEC_60204_1, route("a", true, null, null, 1, 2, 3, 4, 5)))
                .isEqualTo(0.57);
    }

    @Test
    void theWorstRouteOfACircuitCounts() {
        assertThat(factor(
                        CodeBasis.IEC_60204_1,
                        route("a", false, null, null, 1, 2),
                        route("b", true, null, null, 1, 2, 3)))
                .isEqualTo(0.65);
    }

    /** NFPA 70 Table 310.15(C)(1): to 3 conductors 1, to 6 0.8, to 9 0.7, to 20 0.5; three-phase cables count three each. */
    @Test
    void conductorsTogetherUnderNfpa() {
        assertThat(factor(CodeBasis.NFPA_79, route("a", false, null, null, 1))).isEqualTo(1);
        assertThat(factor(CodeBasis.NFPA_79, route("a", false, null, null, 1, 2)))
                .isEqualTo(0.8);
        assertThat(factor(CodeBasis.NFPA_79, route("a", false, null, null, 1, 2, 3)))
                .isEqualTo(0.7);
        assertThat(factor(CodeBasis.NFPA_79, route("a", true, null, null, 1, 2, 3)))
                .isEqualTo(0.5);
    }

    /** 310.15(C)(1)(b): not in nipples of 24 in and less; 376.22(B): not in metal wireways with up to 30 conductors. */
    @Test
    void shortStretchesAndMetalWirewaysAreExempt() {
        Containment metal = new Trunking(new Length(0.2), new Length(0.1), true);
        Containment plastic = new Trunking(new Length(0.2), new Length(0.1), false);
        assertThat(factor(CodeBasis.NFPA_79, route("a", true, null, new Length(0.6), 1, 2, 3)))
                .isEqualTo(1);
        assertThat(factor(CodeBasis.NFPA_79, route("a", true, null, new Length(0.62), 1, 2, 3)))
                .isEqualTo(0.5);
        assertThat(factor(CodeBasis.NFPA_79, route("a", true, metal, null, 1, 2, 3)))
                .isEqualTo(1);
        assertThat(factor(CodeBasis.NFPA_79, route("a", true, plastic, null, 1, 2, 3)))
                .isEqualTo(0.5);
        // IEC knows neither exception
        assertThat(factor(CodeBasis.IEC_60204_1, route("a", true, metal, new Length(0.5), 1, 2, 3)))
                .isEqualTo(0.65);
    }

    /** What is stated for the whole machine holds for a circuit on no route, and for it only. */
    @Test
    void aCircuitOnNoRouteStaysWithWhatIsStated() {
        StudyResult study =
                STUDY.system(request(CodeBasis.IEC_60204_1, 4, route("a", false, null, null, 0, 1, 2, 3, 4, 5)));
        assertThat(factor(study, "feeder")).isEqualTo(0.65);
        assertThat(factor(study, "axis-1")).isEqualTo(0.57);
    }

    @Test
    void theRoutesAreAnsweredWithTheirCables() {
        StudyResult study = STUDY.system(request(
                CodeBasis.IEC_60204_1,
                1,
                new CableRoute(
                        "chain",
                        List.of("axis-2", "axis-4"),
                        true,
                        false,
                        new Trunking(new Length(0.02), new Length(0.03), false),
                        null,
                        new Length(0.03),
                        true,
                        List.of(),
                        new ClampingRange(new Length(0.013), new Length(0.018)))));
        assertThat(study.containment().routes())
                .singleElement()
                .satisfies(use -> assertThat(use.cables())
                        .extracting(RoutedCable::load)
                        .containsExactly("feeder", "axis-2", "axis-4"))
                // three cables of 12 mm: 3 · 113.1 mm² of 600 mm²
                .satisfies(use -> assertThat(Objects.requireNonNull(use.fill())).isBetween(0.565, 0.566));
        assertThat(study.findings())
                .filteredOn(f -> f.code().name().startsWith("CONTAINMENT"))
                .extracting(f -> f.code().name() + " " + f.pointer())
                .containsExactlyInAnyOrder(
                        FindingCode.CONTAINMENT_FILL_HIGH + " /design/installation/cableRoutes/0/containment",
                        FindingCode.CONTAINMENT_BEND_TIGHT + " /design/installation/cableRoutes/0/bendRadius",
                        FindingCode.CONTAINMENT_GLAND_MISFIT + " /design/installation/cableRoutes/0/gland/minimum",
                        FindingCode.CONTAINMENT_GLAND_MISFIT + " /design/installation/cableRoutes/0/gland/minimum",
                        FindingCode.CONTAINMENT_GLAND_MISFIT + " /design/installation/cableRoutes/0/gland/minimum");
    }

    private static StudyResult chained(double dearer, boolean material) {
        StudyRequest request = request(
                CodeBasis.IEC_60204_1,
                1,
                new CableRoute("chain", List.of("axis-2"), false, false, null, null, null, true, List.of(), null));
        List<BulkCable> stiff = request.catalogue().bulkCables().stream()
                .map(c -> Copies.with(c, "flexible", false))
                .toList();
        List<BulkCable> flexible = request.catalogue().bulkCables().stream()
                .filter(_ -> dearer > 0)
                .map(c -> Copies.with(c, "id", "flexible-" + c.id()))
                .map(c -> Copies.with(
                        c,
                        "price",
                        new Money(
                                Objects.requireNonNull(c.price()).amount().multiply(BigDecimal.valueOf(dearer)),
                                "EUR")))
                .toList();
        Design design = request.design();
        if (material) {
            design = Copies.with(
                    design,
                    "installation",
                    Copies.with(
                            Objects.requireNonNull(design.installation()), "material", ConductorMaterial.ALUMINIUM));
        }
        return STUDY.system(new StudyRequest(
                request.codeBasis(),
                Copies.with(
                        request.catalogue(),
                        "bulkCables",
                        Stream.concat(stiff.stream(), flexible.stream()).toList()),
                design));
    }

    /** In a drag chain the flexible cable is bought though it costs thrice as much; elsewhere the cheaper one. */
    @Test
    void whatIsFlexedGetsAFlexibleCable() {
        StudyResult study = chained(3, false);
        assertThat(study.containment().routes().getFirst().cables())
                .extracting(RoutedCable::item)
                .allMatch(item -> item.startsWith("flexible-power-4x"));
        assertThat(study.billOfMaterials().required().lines())
                .extracting(BillLine::item)
                .anyMatch(item -> item.startsWith("power-5x"))
                .noneMatch(item -> item.startsWith("flexible-power-5x"));
        assertThat(study.findings()).extracting(Finding::code).doesNotContain(FindingCode.CONTAINMENT_CABLE_STIFF);
    }

    @Test
    void aStiffCableInADragChainIsToldWhereThereIsNoOther() {
        assertThat(chained(0, false).findings())
                .filteredOn(f -> f.code() == FindingCode.CONTAINMENT_CABLE_STIFF)
                .singleElement()
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/design/installation/cableRoutes/0/moving"));
        assertThat(chained(0, true).findings())
                .filteredOn(f -> f.code() == FindingCode.CONDUCTOR_NOT_FLEXIBLE)
                .singleElement()
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/design/installation/material"));
    }

    @Test
    void aRouteOfAnAxisThatIsNotThereIsAFault() {
        assertThatThrownBy(
                        () -> STUDY.system(request(CodeBasis.IEC_60204_1, 1, route("a", false, null, null, 1, 7, 1))))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .containsExactly(
                                        "/design/installation/cableRoutes/0/axes/1",
                                        "/design/installation/cableRoutes/0/axes/2"));
    }
}
