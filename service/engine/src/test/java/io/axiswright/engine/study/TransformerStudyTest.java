package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.DesignCheck;
import io.axiswright.engine.design.Enclosure;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Operation;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.design.Transformers;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.energy.EnergyPurpose;
import io.axiswright.engine.fault.FaultPlace;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.TransformerNeed;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A machine whose drive units are made for 230 V, on mains of 400 V. */
class TransformerStudyTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    private static StudyRequest request(@Nullable Transformers transformers) {
        StudyRequest cell = TestCell.request(3);
        Catalogue catalogue = cell.catalogue();
        List<DriveUnit> units = catalogue.driveUnits().stream()
                .map(unit -> Copies.with(unit, "ratedVoltage", new Voltage(230)))
                .map(unit -> Copies.with(unit, "busTripVoltage", new Voltage(420)))
                .toList();
        return new StudyRequest(
                CodeBasis.IEC_60204_1,
                Copies.with(catalogue, "driveUnits", units),
                design(cell.design(), transformers));
    }

    private static Design design(Design cell, @Nullable Transformers transformers) {
        Installation installation = Objects.requireNonNull(cell.installation());
        return Copies.with(
                cell,
                "installation",
                Copies.with(Copies.with(installation, "transformerImpedance", 0.04), "transformers", transformers));
    }

    private static Transformers of(@Nullable SystemEarthing earthing, @Nullable Double resistive, String... axes) {
        return new Transformers(List.of(axes), null, earthing, resistive, null, null);
    }

    private static final StudyResult BEHIND = STUDY.system(request(of(null, 0.03, "axis-0", "axis-1", "axis-2")));

    private static CircuitConductors conductors(String circuit) {
        return BEHIND.conductors().circuits().stream()
                .filter(c -> c.id().equals(circuit))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void unitsForAnotherVoltageAreUnfitUnlessATransformerIsDecidedOn() {
        assertThat(STUDY.system(request(null)).duty().axes()).noneMatch(AxisDuty::feasible);
        assertThat(BEHIND.duty().axes()).allMatch(AxisDuty::feasible);
        assertThat(BEHIND.supply().unfed()).isEmpty();
        assertThat(BEHIND.findings())
                .extracting(Finding::code)
                .contains(FindingCode.SUPPLY_TRANSFORMER_NEEDED)
                .doesNotContain(FindingCode.SUPPLY_VOLTAGE_MISFIT);
    }

    /** √2 · 230 V, not √2 · 400 V. */
    @Test
    void theBusStandsAtThePeakOfTheSecondary() {
        assertThat(BEHIND.braking().groups())
                .allSatisfy(
                        group -> assertThat(group.nominalVoltage().si()).isCloseTo(Math.sqrt(2) * 230, within(1e-9)));
    }

    /** Circuits behind get what feeder and transformer leave of the voltage drop; the conductors carry the device. */
    @Test
    void conductorsAreThoseOfTheSecondary() {
        TransformerNeed need = BEHIND.supply().transformers().getFirst();
        double lost = Objects.requireNonNull(conductors("feeder").voltageDropShare())
                + Objects.requireNonNull(need.regulation());
        List<BranchCircuit> behind = BEHIND.supply().circuits().stream()
                .filter(circuit -> need.id().equals(circuit.transformer()))
                .toList();
        assertThat(behind).isNotEmpty().allSatisfy(circuit -> {
            CircuitConductors sized = conductors(circuit.id());
            assertThat(circuit.voltage().si()).isEqualTo(230);
            assertThat(Objects.requireNonNull(sized.voltageDropShare())).isLessThanOrEqualTo(0.05 - lost + 1e-9);
        });
        var feeder = Objects.requireNonNull(need.feeder());
        assertThat(Objects.requireNonNull(conductors("T1/feeder").correctedAmpacity())
                        .si())
                .isGreaterThanOrEqualTo(
                        Objects.requireNonNull(feeder.deviceRating()).si());
        assertThat(conductors(Objects.requireNonNull(need.primaryCircuit())).conductor())
                .isNotNull();
    }

    @Test
    void faultsAreStudiedBehindIt() {
        assertThat(BEHIND.faults().points())
                .filteredOn(
                        point -> point.place() == FaultPlace.LOAD && point.id().startsWith("axis"))
                .hasSize(3)
                .allSatisfy(point ->
                        assertThat(Objects.requireNonNull(point.circuit())).startsWith("T1/"));
        assertThat(BEHIND.faults().circuits())
                .filteredOn(circuit -> circuit.id().startsWith("T1/"))
                .allSatisfy(circuit -> assertThat(circuit.loopImpedance()).isNotNull());
        double highest =
                BEHIND.supply().transformers().getFirst().faultCurrent().si();
        assertThat(BEHIND.faults().points())
                .filteredOn(point -> point.place() == FaultPlace.TRANSFORMER_SECONDARY)
                .allSatisfy(point -> assertThat(point.maximum().threePhase())
                        .satisfies(current ->
                                assertThat(Objects.requireNonNull(current).si()).isLessThanOrEqualTo(highest)));
        assertThat(BEHIND.faults().unrated()).doesNotContain("T1");
    }

    /** The device behind it and the cables of its circuits are bought. */
    @Test
    void theBillHoldsWhatStandsBehindIt() {
        String device = Objects.requireNonNull(
                Objects.requireNonNull(BEHIND.supply().transformers().getFirst().feeder())
                        .device());
        assertThat(BEHIND.billOfMaterials().required().lines())
                .filteredOn(line -> line.item().equals(device))
                .flatExtracting(BillLine::demands)
                .anySatisfy(demand -> assertThat(demand.toString()).contains("transformer T1"));
        assertThat(BEHIND.billOfMaterials().required().lines())
                .anyMatch(line -> line.item().startsWith("power-4x"));
    }

    @Test
    void controlSuppliesMayStandBehindOneToo() {
        var transformers = new Transformers(List.of("axis-0", "axis-1", "axis-2"), true, null, 0.03, null, null);
        var study = STUDY.system(request(transformers));
        assertThat(study.supply().circuits())
                .filteredOn(circuit -> circuit.loads()
                        .contains(study.controlPower().supplies().getFirst().id()))
                .allSatisfy(circuit -> assertThat(circuit.transformer()).isNotNull());
    }

    private static StudyResult inPanel(@Nullable Double noLoadLoss) {
        StudyRequest request = request(
                new Transformers(List.of("axis-0", "axis-1", "axis-2"), null, null, 0.03, noLoadLoss, "panel-0"));
        var panel = new Enclosure(
                "panel-0",
                new Length(1),
                new Length(1),
                new Length(1),
                false,
                null,
                false,
                null,
                List.of(),
                null,
                null,
                null);
        Design design = request.design();
        var installation = Copies.with(Objects.requireNonNull(design.installation()), "enclosures", List.of(panel));
        return STUDY.system(new StudyRequest(
                request.codeBasis(),
                request.catalogue(),
                Copies.with(
                        Copies.with(design, "installation", installation),
                        "operation",
                        new Operation(new Time(3.6e6), null, null))));
    }

    /**
     * Losses by hand, 1.5 % of the rating without load and 3 % of it by the square of what its loads draw over what it is rated for:
     * heat of the enclosure it stands in, and energy of the machine.
     */
    @Test
    void itsLossesAreHeatOfItsEnclosureAndEnergyOfTheMachine() {
        var study = inPanel(0.015);
        TransformerNeed need = study.supply().transformers().getFirst();
        var rating = Objects.requireNonNull(need.rating());
        double thermal = study.duty().axes().stream()
                .mapToDouble(axis ->
                        Objects.requireNonNull(axis.unit()).cycleInputCurrent().si())
                .sum();
        double share = thermal / rating.secondaryCurrent().si();
        double watts = rating.power().si() * (0.015 + 0.03 * share * share);
        assertThat(study.enclosures().enclosures().getFirst().sources())
                .filteredOn(source -> source.name().equals(need.id()))
                .singleElement()
                .satisfies(source -> assertThat(source.power().si()).isCloseTo(watts, within(1e-9 * watts)));
        assertThat(Objects.requireNonNull(study.energy()).shares())
                .filteredOn(part -> part.purpose() == EnergyPurpose.TRANSFORMERS)
                .singleElement()
                .satisfies(part -> assertThat(part.use().meanPower().si()).isCloseTo(watts, within(1e-9 * watts)));
    }

    @Test
    void lossesThatAreNotStatedAreTold() {
        assertThat(inPanel(null).findings())
                .filteredOn(f -> f.code() == FindingCode.ENCLOSURE_LOSS_UNKNOWN)
                .singleElement()
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/design/installation/enclosures/0"));
        assertThat(inPanel(0.01).findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.ENCLOSURE_LOSS_UNKNOWN);
    }

    @Test
    void whatHasNoMeaningIsAFault() {
        Design cell = TestCell.design(1);
        assertThat(faults(cell, of(null, null, "axis-9"))).containsExactly("/installation/transformers/axes/0");
        assertThat(faults(cell, of(SystemEarthing.TT, null))).containsExactly("/installation/transformers/earthing");
        assertThat(faults(cell, of(SystemEarthing.IT, 0.05)))
                .containsExactly("/installation/transformers/resistiveVoltage");
        assertThat(faults(cell, of(SystemEarthing.IT, 0.04, "axis-0"))).isEmpty();
        assertThat(faults(cell, new Transformers(List.of(), null, null, null, null, "nowhere")))
                .containsExactly("/installation/transformers/place");
    }

    private static List<String> faults(Design cell, Transformers transformers) {
        return DesignCheck.faults(design(cell, transformers), "").stream()
                .map(Fault::pointer)
                .toList();
    }
}
