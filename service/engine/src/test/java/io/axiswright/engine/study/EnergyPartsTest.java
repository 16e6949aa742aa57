package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.braking.BrakingCase;
import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.DesignCheck;
import io.axiswright.engine.design.OperatingLife;
import io.axiswright.engine.design.Operation;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.enclosure.HeatSource;
import io.axiswright.engine.energy.AxisEnergy;
import io.axiswright.engine.energy.BusEnergy;
import io.axiswright.engine.energy.CableEconomy;
import io.axiswright.engine.energy.EnergyPurpose;
import io.axiswright.engine.energy.EnergyResult;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.topology.LayoutEffort;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What a study finds out about the energy of a machine. */
class EnergyPartsTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);
    private static final double SECONDS = 5000 * 3600.0;

    private static Design running(Design design) {
        return Copies.with(
                design, "operation", new Operation(new Time(SECONDS), new Money(new BigDecimal("0.21"), "EUR"), null));
    }

    private static StudyResult study(Design design, Catalogue catalogue) {
        return STUDY.system(new StudyRequest(CodeBasis.IEC_60204_1, catalogue, running(design)));
    }

    private static Catalogue withRatedLoss(double watts) {
        Catalogue catalogue = TestCell.catalogue();
        return Copies.with(
                catalogue,
                "driveUnits",
                catalogue.driveUnits().stream()
                        .map(unit -> Copies.with(unit, "ratedLoss", new Power(watts)))
                        .toList());
    }

    /** The axes share a bus, so that one returns what another takes. */
    private static Design onOneBus(int axes) {
        Design design = TestCell.design(axes);
        return Copies.with(
                design,
                "axes",
                design.axes().stream()
                        .map((Axis axis) -> Copies.with(axis, "busGroup", "bus"))
                        .toList());
    }

    private static EnergyResult energy(StudyResult study) {
        return Objects.requireNonNull(study.energy());
    }

    @Test
    void nothingIsSaidOfAMachineWhoseOperationIsNotStated() {
        assertThat(STUDY.system(TestCell.request(2)).energy()).isNull();
    }

    /**
     * The simulation of the bus adds up what its rectifier supplies and its resistor burns on its own; the difference is what
     * shafts, windings and electronics take for good, at any line voltage.
     */
    @Test
    void theBusesTakeWhatTheirSimulationSupplies() {
        for (Design design : List.of(TestCell.design(3), onOneBus(3))) {
            StudyResult study = study(design, TestCell.catalogue());
            List<BusEnergy> buses = energy(study).buses();
            assertThat(buses).hasSameSizeAs(study.braking().groups()).isNotEmpty();
            for (int k = 0; k < buses.size(); k++) {
                GroupBraking group = study.braking().groups().get(k);
                BrakingCase cycle = group.cases().getFirst();
                double simulated =
                        (cycle.suppliedEnergy().si() - cycle.resistorEnergy().si())
                                / cycle.duration().si();
                double balanced = buses.get(k).supplied().meanPower().si()
                        - buses.get(k).burned().meanPower().si();
                assertThat(balanced).isCloseTo(simulated, within(1e-9 * simulated));
                assertThat(buses.get(k).bound()).isFalse();
            }
        }
    }

    /** Shaft work, copper and standby loss by sampling the course of the motor a hundred thousand times. */
    @Test
    void theAxisUsesWhatItsCourseSays() {
        StudyResult study = study(TestCell.design(1), TestCell.catalogue());
        AxisDuty duty = study.duty().axes().getFirst();
        AxisEnergy axis = energy(study).axes().getFirst();
        DriveUnit unit = TestCell.catalogue().driveUnits().stream()
                .filter(u -> u.id().equals(duty.driveUnit()))
                .findFirst()
                .orElseThrow();
        int samples = 100_000;
        double motored = 0;
        double returned = 0;
        double copper = 0;
        double period = duty.course().duration();
        for (int k = 0; k < samples; k++) {
            double t = (k + 0.5) / samples * period;
            Course.Piece piece = duty.course().pieces().stream()
                    .filter(p -> p.start() <= t && t <= p.end())
                    .findFirst()
                    .orElseThrow();
            double torque = piece.torque().at(t - piece.start());
            double power = torque * piece.speed().at(t - piece.start());
            motored += Math.max(0, power) / samples;
            returned += Math.max(0, -power) / samples;
            copper += Math.pow(torque / unit.motorConstant().si(), 2) / samples;
        }
        assertThat(axis.motored().si()).isCloseTo(motored * SECONDS, within(1e-4 * motored * SECONDS));
        assertThat(axis.returned().si()).isCloseTo(returned * SECONDS, within(1e-4 * motored * SECONDS));
        assertThat(axis.copperLoss().si()).isCloseTo(copper * SECONDS, within(1e-4 * copper * SECONDS));
        assertThat(axis.standbyLoss().si()).isCloseTo(10 * SECONDS, within(1e-6));
        assertThat(axis.loadLoss()).isNull();
    }

    @Test
    void theBalanceCloses() {
        EnergyResult energy = energy(study(onOneBus(5), withRatedLoss(25)));
        double used =
                energy.shares().stream().mapToDouble(s -> s.use().energy().si()).sum();
        double taken =
                energy.axes().stream().mapToDouble(a -> a.net().energy().si()).sum()
                        + energy.buses().stream()
                                .mapToDouble(b -> b.burned().energy().si())
                                .sum()
                        + energy.controlSupplies().stream()
                                .mapToDouble(s -> s.delivered().si() + s.lost().si())
                                .sum()
                        + energy.conductors().stream()
                                .mapToDouble(c -> c.lost().energy().si())
                                .sum();
        double total = energy.total().energy().si();
        assertThat(used).isCloseTo(total, within(1e-9 * total));
        assertThat(taken).isCloseTo(total, within(1e-9 * total));
        assertThat(energy.findings()).isEmpty();
    }

    /**
     * Two like drives on one circuit, 0.6 m of slack and 2 m · 1.1 + 0.6 m = 2.8 m from the panel, in copper of IEC 60228 class 5,
     * 1.5 mm²: 13.3 ohm/km at 20 °C, at the mean of 40 °C + (70 − 40)/3 K = 50 °C times 1 + 0.00393 · 30. Three lines each.
     */
    @Test
    void conductorsAreHeatedByTheCurrentsOfTheCycle() {
        StudyResult study = study(TestCell.design(2), TestCell.catalogue());
        double current = Objects.requireNonNull(study.duty().axes().getFirst().unit())
                .cycleInputCurrent()
                .si();
        double perMetre = 13.3e-3 * (1 + 0.00393 * 30);
        double drives = 3 * current * current * perMetre * (0.6 + 2.8);
        String circuit = study.supply().circuits().stream()
                .filter(c -> c.loads().contains("axis-0"))
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(energy(study).conductors())
                .filteredOn(c -> c.circuit().equals(circuit))
                .singleElement()
                .satisfies(c -> assertThat(c.lost().meanPower().si()).isCloseTo(drives, within(1e-9 * drives)));
        assertThat(energy(study).conductors()).anyMatch(c -> c.circuit().equals("feeder"));
    }

    /** At 25 W rated and 10 W without load, the effective torque over the rated one shares out the 15 W between. */
    @Test
    void whatTheLoadAddsHeatsTheEnclosureToo() {
        Design design = TestCell.design(1);
        var panel = new io.axiswright.engine.design.Enclosure(
                "panel-0",
                new Length(1),
                new Length(1),
                new Length(1),
                false,
                null,
                false,
                null,
                List.of("axis-0"),
                null,
                null,
                null);
        StudyResult study = study(
                Copies.with(
                        design,
                        "installation",
                        Copies.with(Objects.requireNonNull(design.installation()), "enclosures", List.of(panel))),
                withRatedLoss(25));
        AxisDuty duty = study.duty().axes().getFirst();
        double rated = Objects.equals(duty.driveUnit(), "unit-small") ? 1.3 : 5;
        double byLoad = 15 * duty.figures().rmsTorque().si() / rated;
        assertThat(byLoad).isBetween(0.1, 15.0);
        assertThat(Objects.requireNonNull(energy(study).axes().getFirst().loadLoss())
                        .si())
                .isCloseTo(byLoad * SECONDS, within(1e-9 * SECONDS));
        assertThat(study.enclosures().enclosures().getFirst().sources())
                .filteredOn(s -> s.name().equals("axis-0"))
                .singleElement()
                .extracting(HeatSource::power)
                .satisfies(p -> assertThat(p.si()).isCloseTo(10 + byLoad, within(1e-9)));
        assertThat(energy(study).shares())
                .filteredOn(s -> s.purpose() == EnergyPurpose.ELECTRONICS_LOAD)
                .singleElement()
                .satisfies(s -> assertThat(s.use().meanPower().si()).isCloseTo(byLoad, within(1e-9)));
    }

    private static StudyResult overLife(CodeBasis basis, String price) {
        Design design = Copies.with(
                TestCell.design(4),
                "operation",
                new Operation(
                        new Time(SECONDS),
                        new Money(new BigDecimal(price), "EUR"),
                        new OperatingLife(15, 0.04, null, null)));
        return STUDY.system(new StudyRequest(basis, TestCell.catalogue(), design));
    }

    /** However dear energy is, the selected cables stay; however cheap, no option is thinner than the code asks for. */
    @Test
    void cablesAreWeighedWithinTheCode() {
        StudyResult dear = overLife(CodeBasis.IEC_60204_1, "500");
        StudyResult cheap = overLife(CodeBasis.IEC_60204_1, "0.0001");
        assertThat(dear.conductors()).isEqualTo(cheap.conductors());
        List<CableEconomy> cables = Objects.requireNonNull(energy(dear).cables());
        assertThat(cables).hasSameSizeAs(energy(dear).conductors()).isNotEmpty();
        for (CableEconomy cable : cables) {
            ConductorSize needed = dear.conductors().circuits().stream()
                    .filter(c -> c.id().equals(cable.circuit()))
                    .findFirst()
                    .orElseThrow()
                    .conductor();
            assertThat(cable.options())
                    .allSatisfy(o -> assertThat(o.size()).isGreaterThanOrEqualTo(Objects.requireNonNull(needed)));
        }
        assertThat(dear.findings())
                .filteredOn(f -> f.code() == FindingCode.ENERGY_THICKER_CABLE_CHEAPER)
                .isNotEmpty();
        assertThat(Objects.requireNonNull(energy(cheap).cables()))
                .allSatisfy(c -> assertThat(c.cheapest()).isEqualTo(c.selected()));
    }

    @Test
    void aLifeNeedsAPrice() {
        Design design = Copies.with(
                TestCell.design(1),
                "operation",
                new Operation(new Time(SECONDS), null, new OperatingLife(15, 0.04, null, null)));
        assertThat(DesignCheck.faults(design, "/design"))
                .extracting(Fault::pointer)
                .containsExactly("/design/operation/energyPrice");
    }
}
