package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.Copies;
import io.axiswright.engine.braking.BrakingResult;
import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.fault.CircuitFault;
import io.axiswright.engine.fault.FaultPoint;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.mounting.FasteningLoad;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.LayoutMethod;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SystemStudyTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    @Test
    void everyAxisIsServedToTheBill() {
        StudyResult result = STUDY.system(TestCell.request(6));
        assertThat(result.buildable()).as("%s", result.findings()).isTrue();
        assertThat(result.duty().axes()).hasSize(6).allMatch(AxisDuty::feasible);
        assertThat(result.topology().gateways().stream().flatMap(g -> g.spurs().stream()))
                .hasSize(6);
        assertThat(result.controlPower().supplies()).isNotEmpty();
        assertThat(result.braking().groups()).hasSize(6);
        assertThat(result.supply().circuits().stream().flatMap(c -> c.loads().stream()))
                .contains("axis-0", "axis-1", "axis-2", "axis-3", "axis-4", "axis-5");
        assertThat(result.conductors().circuits())
                .hasSize(result.supply().circuits().size() + 1);
        assertThat(result.mounting().axes()).hasSize(6);
        assertThat(result.billOfMaterials().closing().closes()).isTrue();
        assertThat(result.billOfMaterials().required().lines()).anySatisfy(line -> {
            assertThat(line.item()).isEqualTo("rail");
            assertThat(line.quantity()).isEqualByComparingTo("1");
        });
    }

    @Test
    void aNetworkWithoutALayoutCostsNotNothingButIsMissingFromTheBill() {
        StudyRequest request = TestCell.request(3);
        Catalogue c = request.catalogue();
        var withoutGateways = Copies.with(c, "gateways", List.of());
        StudyResult result = STUDY.system(new StudyRequest(request.codeBasis(), withoutGateways, request.design()));
        assertThat(result.topology().method()).isEqualTo(LayoutMethod.NONE);
        assertThat(result.topology().cost()).isNull();
        assertThat(result.billOfMaterials().findings())
                .extracting(Finding::code)
                .contains(FindingCode.BILL_NETWORK_MISSING);
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.BILL_NETWORK_MISSING);
        assertThat(STUDY.system(request).billOfMaterials().findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.BILL_NETWORK_MISSING);
    }

    /** The fastening of an axis in a stop zone is judged by its stop too, and by its brake where it has one. */
    @Test
    void fasteningsMeetTheStopsOfTheirZone() {
        StudyRequest request = TestCell.request(1);
        var hard = new StopZone("zone", StopCategory.CATEGORY_1, new Time(0.03), new Time(0.05), null);
        StudyResult result = STUDY.system(new StudyRequest(
                request.codeBasis(), request.catalogue(), Copies.with(request.design(), "stopZones", List.of(hard))));
        AxisDuty duty = result.duty().axes().getFirst();
        double stop = Objects.requireNonNull(duty.hardestStop()).value().si();
        assertThat(stop).isGreaterThan(duty.figures().peakTorque().si());
        var mounting = result.mounting().axes().getFirst();
        assertThat(mounting.requiredBy()).isEqualTo(FasteningLoad.STOP);
        assertThat(mounting.required().si())
                .isEqualTo(stop
                        * Objects.requireNonNull(
                                        request.design().axes().getFirst().mounting())
                                .safetyFactor());
    }

    /**
     * One load after the other until the only drive unit just gets too warm: a fan would help, but the kit is for 110 V, which mains of
     * 400/231 V do not have. With the same kit for 230 V there is nothing to say.
     */
    @Test
    void aFanThatCannotBeFedIsToldWhereItIsMissed() {
        StudyRequest request = TestCell.request(1);
        DriveUnit unit = request.catalogue().driveUnits().getFirst();
        Axis axis = request.design().axes().getFirst();
        Axis warm = Copies.with(axis, "drive", Copies.with(axis.drive(), "forcedVentilationAllowed", true));
        boolean missed = false;
        for (double load = 40; load < 2000 && !missed; load *= 1.02) {
            Axis loaded = Copies.with(warm, "mechanism", Copies.with((Belt) warm.mechanism(), "load", new Mass(load)));
            var unfed = ventilated(request, unit, loaded, 110);
            missed = unfed.findings().stream().anyMatch(f -> f.code() == FindingCode.STUDY_VENTILATION_NONE);
            if (missed) {
                assertThat(unfed.buildable()).isFalse();
                assertThat(ventilated(request, unit, loaded, 230).findings())
                        .extracting(Finding::code)
                        .doesNotContain(FindingCode.STUDY_VENTILATION_NONE);
            }
        }
        assertThat(missed).isTrue();
    }

    private static StudyResult ventilated(StudyRequest request, DriveUnit unit, Axis axis, double voltage) {
        var kit = new VentilationKit(
                "fan",
                "fan",
                null,
                List.of(),
                unit.frameSize(),
                1.5,
                new Power(20),
                new Voltage(voltage),
                Feed.ONE_PHASE);
        Catalogue catalogue = Copies.with(
                Copies.with(request.catalogue(), "driveUnits", List.of(unit)), "ventilationKits", List.of(kit));
        return STUDY.system(
                new StudyRequest(request.codeBasis(), catalogue, Copies.with(request.design(), "axes", List.of(axis))));
    }

    /** Who asks for the bill alone must hear what is not on it, and in the whole it is said once. */
    @Test
    void theBillAloneSaysWhatCouldNotBeChosen() {
        StudyRequest request = TestCell.request(3);
        Catalogue whole = request.catalogue();
        assertThat(violations(request, whole)).isEmpty();
        assertThat(violations(request, Copies.with(whole, "protectiveDevices", List.of())))
                .contains(FindingCode.SUPPLY_DEVICE_MISSING);
        assertThat(violations(request, Copies.with(whole, "bulkCables", List.of())))
                .contains(FindingCode.STUDY_NO_POWER_CABLE);
        assertThat(violations(request, Copies.with(whole, "controlSupplies", List.of())))
                .contains(FindingCode.CONTROL_SUPPLY_NONE);
        assertThat(violations(request, Copies.with(whole, "driveUnits", List.of())))
                .contains(FindingCode.DUTY_CATALOGUE_EMPTY);

        var request2 = new StudyRequest(
                request.codeBasis(), Copies.with(whole, "fasteningParts", List.of()), request.design());
        assertThat(STUDY.billOfMaterials(request2).findings())
                .extracting(Finding::code)
                .contains(FindingCode.MOUNTING_PART_NONE);
        assertThat(STUDY.system(request2).findings()).doesNotHaveDuplicates();
    }

    private static List<FindingCode> violations(StudyRequest request, Catalogue catalogue) {
        var asked = new StudyRequest(request.codeBasis(), catalogue, request.design());
        List<FindingCode> codes = STUDY.billOfMaterials(asked).findings().stream()
                .filter(f -> f.severity() == Severity.VIOLATION)
                .map(Finding::code)
                .toList();
        assertThat(STUDY.system(asked).buildable()).isEqualTo(codes.isEmpty());
        assertThat(STUDY.system(asked).findings()).doesNotHaveDuplicates();
        return codes;
    }

    @Test
    void theSameInputGivesTheSameAnswer() {
        assertThat(SystemStudy.proving().system(TestCell.request(5)))
                .usingRecursiveComparison()
                .isEqualTo(SystemStudy.proving().system(TestCell.request(5)));
    }

    @Test
    void aPartIsWhatItIsInTheWhole() {
        StudyRequest request = TestCell.request(4);
        StudyResult whole = STUDY.system(request);
        assertThat(STUDY.duty(request)).usingRecursiveComparison().isEqualTo(whole.duty());
        assertThat(STUDY.topology(request)).isEqualTo(whole.topology());
        assertThat(STUDY.controlPower(request)).isEqualTo(whole.controlPower());
        // by itself it also tells within which times stops need no braking unit, which would slow down every study
        BrakingResult braking = STUDY.braking(request);
        assertThat(braking.groups())
                .allSatisfy(group -> assertThat(group.unaidedStops()).isNotEmpty());
        List<GroupBraking> plain = braking.groups().stream()
                .map(group -> Copies.with(group, "unaidedStops", null))
                .toList();
        assertThat(Copies.with(braking, "groups", plain)).isEqualTo(whole.braking());
        assertThat(STUDY.supply(request)).isEqualTo(whole.supply());
        assertThat(STUDY.conductors(request)).isEqualTo(whole.conductors());
        assertThat(STUDY.faults(request)).isEqualTo(whole.faults());
        assertThat(STUDY.mounting(request)).isEqualTo(whole.mounting());
        assertThat(STUDY.billOfMaterials(request)).isEqualTo(whole.billOfMaterials());
    }

    @Test
    void theOrderOfAxesChangesNothingButOrder() {
        StudyRequest request = TestCell.request(5);
        List<Axis> reversed = new ArrayList<>(request.design().axes());
        Collections.reverse(reversed);
        StudyResult one = STUDY.system(request);
        StudyResult other =
                STUDY.system(new StudyRequest(request.codeBasis(), request.catalogue(), with(request, reversed)));
        assertThat(sorted(other.duty().axes()))
                .usingRecursiveComparison()
                .isEqualTo(sorted(one.duty().axes()));
        assertThat(other.billOfMaterials().required().total())
                .isEqualTo(one.billOfMaterials().required().total());
    }

    private static List<AxisDuty> sorted(List<AxisDuty> axes) {
        return axes.stream().sorted(Comparator.comparing(AxisDuty::axis)).toList();
    }

    @Test
    void dutyNeedsNoNetworkButTheSystemDoes() {
        StudyRequest request = TestCell.request(2);
        Design d = request.design();
        var bare = new StudyRequest(
                request.codeBasis(),
                request.catalogue(),
                Copies.with(Copies.with(Copies.with(d, "network", null), "controlPower", null), "installation", null));
        assertThat(STUDY.duty(bare).axes()).hasSize(2);
        assertThat(STUDY.braking(bare).groups()).hasSize(2);
        assertThatThrownBy(() -> STUDY.system(bare))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .anySatisfy(f -> assertThat(f.pointer()).isEqualTo("/design/network")));
    }

    @Test
    void findingsComeWorstFirstAndEndWithTheQualifiedPerson() {
        List<Finding> findings = STUDY.system(TestCell.request(3)).findings();
        assertThat(findings).isSortedAccordingTo(Comparator.comparing(Finding::severity));
        assertThat(findings).extracting(Finding::code).contains(FindingCode.STUDY_QUALIFIED_PERSON);
    }

    @Test
    void aCircuitWithoutAFittingCableIsAViolation() {
        StudyRequest request = TestCell.request(2);
        StudyResult result = STUDY.system(
                new StudyRequest(request.codeBasis(), withBulk(request.catalogue(), List.of()), request.design()));
        assertThat(result.buildable()).isFalse();
        assertThat(result.findings()).anySatisfy(f -> {
            assertThat(f.code()).isEqualTo(FindingCode.STUDY_NO_POWER_CABLE);
            assertThat(f.severity()).isEqualTo(Severity.VIOLATION);
        });
    }

    @Test
    void aDcFedUnitWithNothingToFeedItIsAViolation() {
        StudyRequest request = TestCell.request(1);
        Catalogue c = request.catalogue();
        List<DriveUnit> units =
                c.driveUnits().stream().map(SystemStudyTest::dcFed).toList();
        Axis axis = request.design().axes().getFirst();
        Axis asksForDc = new Axis(
                axis.id(),
                axis.description(),
                axis.mechanism(),
                axis.gears(),
                axis.couplingInertia(),
                axis.cycle(),
                axis.position(),
                axis.stopZone(),
                axis.busGroup(),
                axis.commandRate(),
                new DriveWish().feed(Feed.DC_BUS).made(),
                axis.mounting());
        StudyResult result = STUDY.system(
                new StudyRequest(CodeBasis.IEC_60204_1, withUnits(c, units), with(request, List.of(asksForDc))));
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.STUDY_DC_BUS_UNFED);
    }

    @Test
    void aStopHarderThanTheDriveUnitIsAViolation() {
        StudyRequest request = TestCell.request(1);
        Design d = request.design();
        var hard = Copies.with(
                d,
                "stopZones",
                List.of(new StopZone("zone", StopCategory.CATEGORY_1, new Time(0.03), new Time(0.005), null)));
        assertThat(STUDY.system(new StudyRequest(request.codeBasis(), request.catalogue(), hard))
                        .findings())
                .extracting(Finding::code)
                .containsOnlyOnce(FindingCode.STUDY_STOP_TOO_HARD);
    }

    /** Whatever zones and circuits split a bus group, its one-phase rectifiers get the same lines. */
    @Test
    void aBusGroupKeepsToTheSameLines() {
        StudyRequest request = TestCell.request(4);
        List<DriveUnit> units = request.catalogue().driveUnits().stream()
                .map(u -> fedBy(u, Feed.ONE_PHASE, 230))
                .toList();
        StudyResult result = STUDY.system(new StudyRequest(
                CodeBasis.IEC_60204_1,
                withUnits(request.catalogue(), units),
                with(request, onOneBus(request, _ -> null))));
        assertThat(result.supply().circuits())
                .filteredOn(c -> c.loads().stream().anyMatch(l -> l.startsWith("axis-")))
                .hasSizeGreaterThan(1)
                .extracting(BranchCircuit::lines)
                .containsOnly(result.supply().circuits().getFirst().lines());
        assertThat(result.findings()).extracting(Finding::code).doesNotContain(FindingCode.STUDY_BUS_ACROSS_LINES);
    }

    /** A three-phase and a one-phase rectifier on one bus. */
    @Test
    void aBusFedFromTwoSetsOfLinesIsAViolation() {
        StudyRequest request = TestCell.request(4);
        List<DriveUnit> units = new ArrayList<>(request.catalogue().driveUnits());
        request.catalogue().driveUnits().forEach(u -> units.add(renamed(fedBy(u, Feed.ONE_PHASE, 230), u.id() + "-1")));
        StudyResult result = STUDY.system(new StudyRequest(
                CodeBasis.IEC_60204_1,
                withUnits(request.catalogue(), units),
                with(request, onOneBus(request, id -> id.equals("axis-0") ? Feed.ONE_PHASE : Feed.THREE_PHASE))));
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.STUDY_BUS_ACROSS_LINES);
    }

    /** A DC-fed unit beside a mains-fed one of its bus: fed, and drawn from the mains by the other. */
    @Test
    void whatABusPassesOnIsPartOfTheSupply() {
        StudyRequest request = TestCell.request(2);
        List<DriveUnit> units = new ArrayList<>(request.catalogue().driveUnits());
        request.catalogue().driveUnits().forEach(u -> units.add(renamed(dcFed(u), u.id() + "-dc")));
        StudyResult result = STUDY.system(new StudyRequest(
                CodeBasis.IEC_60204_1,
                withUnits(request.catalogue(), units),
                with(request, onOneBus(request, id -> id.equals("axis-0") ? Feed.DC_BUS : Feed.THREE_PHASE))));
        assertThat(result.findings()).extracting(Finding::code).doesNotContain(FindingCode.STUDY_DC_BUS_UNFED);
        assertThat(result.supply().buses()).singleElement().satisfies(bus -> {
            assertThat(bus.feeders()).containsExactly("axis-1");
            assertThat(bus.loads()).containsExactly("axis-0");
            assertThat(bus.passedOn().si()).isPositive();
        });
    }

    private static List<Axis> onOneBus(StudyRequest request, Function<String, @Nullable Feed> feed) {
        return request.design().axes().stream()
                .map(a -> new Axis(
                        a.id(),
                        a.description(),
                        a.mechanism(),
                        a.gears(),
                        a.couplingInertia(),
                        a.cycle(),
                        a.position(),
                        a.id().equals("axis-0") ? "zone" : null,
                        "bus",
                        a.commandRate(),
                        DriveWish.like(a.drive())
                                .item(null)
                                .feed(feed.apply(a.id()))
                                .made(),
                        a.mounting()))
                .toList();
    }

    @Test
    void magnitudesBeyondComputingAreAFaultOfTheInput() {
        StudyRequest request = TestCell.request(1);
        Axis a = request.design().axes().getFirst();
        Axis absurd = new Axis(
                a.id(),
                a.description(),
                a.mechanism(),
                List.of(new Gear(1e-300, 0.9, null, new Inertia(0))),
                a.couplingInertia(),
                a.cycle(),
                a.position(),
                a.stopZone(),
                a.busGroup(),
                a.commandRate(),
                a.drive(),
                a.mounting());
        assertThatThrownBy(() -> STUDY.system(
                        new StudyRequest(request.codeBasis(), request.catalogue(), with(request, List.of(absurd)))))
                .isInstanceOf(InvalidDesign.class);
    }

    private static DriveUnit dcFed(DriveUnit u) {
        return fedBy(u, Feed.DC_BUS, 560);
    }

    private static DriveUnit fedBy(DriveUnit u, Feed feed, double volts) {
        return unit(u, u.id(), feed, new Voltage(volts));
    }

    private static DriveUnit renamed(DriveUnit u, String id) {
        return unit(u, id, u.feed(), u.ratedVoltage());
    }

    private static DriveUnit unit(DriveUnit u, String id, Feed feed, Voltage rated) {
        return new DriveUnit(
                id,
                u.description(),
                u.price(),
                u.needs(),
                u.frameSize(),
                feed,
                rated,
                u.ratedInputCurrent(),
                u.maxProtectiveDevice(),
                u.maxUnitsPerCircuit(),
                u.shortCircuitRating(),
                u.leakageCurrent(),
                u.rotorInertia(),
                u.motorConstant(),
                u.continuousCurve(),
                u.intermittentCurve(),
                u.ratedAmbient(),
                u.ratedRise(),
                u.windingTimeConstant(),
                u.standbyLoss(),
                u.busCapacitance(),
                u.busTripVoltage(),
                u.logicPower(),
                u.logicMinimumVoltage(),
                u.keepAliveInput(),
                u.shaftDiameter(),
                u.shaftLength(),
                u.inertiaRatioLimit());
    }

    private static Design with(StudyRequest request, List<Axis> axes) {
        Design d = request.design();
        return Copies.with(d, "axes", axes);
    }

    private static Catalogue withBulk(Catalogue c, List<BulkCable> cables) {
        return Copies.with(c, "bulkCables", cables);
    }

    private static Catalogue withUnits(Catalogue c, List<DriveUnit> units) {
        return Copies.with(c, "driveUnits", units);
    }

    @Test
    void everyLoadHasItsFaultCurrentAndEveryCircuitItsJudgement() {
        StudyResult result = STUDY.system(TestCell.request(4));
        assertThat(result.faults().points())
                .extracting(FaultPoint::id)
                .startsWith("supply terminals", "mains panel")
                .containsAll(result.supply().circuits().stream()
                        .flatMap(c -> c.loads().stream())
                        .toList());
        assertThat(result.faults().circuits())
                .extracting(CircuitFault::id)
                .hasSize(result.supply().circuits().size() + 1)
                .startsWith("feeder", "C1");
        // the drive units bear 10 kA, the breakers as much: whichever stands first
        assertThat(result.faults().shortCircuitRating()).isEqualTo(new Current(10000));
        assertThat(result.findings()).containsAll(result.faults().findings());
    }

    /** The catalogue of the test cell says nothing of clearing; devices that do let the conductors be checked. */
    @Test
    void conductorsAreHeldAgainstWhatTheirDevicesLetThrough() {
        StudyRequest request = TestCell.request(4);
        assertThat(unchecked(request)).isNotEmpty();
        var tame = STUDY.conductors(withLetThrough(request, 1000));
        var fierce = STUDY.conductors(withLetThrough(request, 1e6));
        assertThat(unchecked(withLetThrough(request, 1000))).isEmpty();
        assertThat(tame.circuits()).hasSameSizeAs(fierce.circuits());
        // sqrt(10⁶ A²s) / 115 = 8.7 mm²
        for (int k = 0; k < tame.circuits().size(); k++) {
            assertThat(fierce.circuits().get(k).conductor())
                    .isGreaterThanOrEqualTo(new ConductorSize("10 mm2"))
                    .isGreaterThanOrEqualTo(tame.circuits().get(k).conductor());
        }
        assertThat(tame.circuits().getLast().conductor()).isLessThan(new ConductorSize("10 mm2"));
    }

    private static List<Finding> unchecked(StudyRequest request) {
        return STUDY.conductors(request).findings().stream()
                .filter(f -> f.code() == FindingCode.CONDUCTOR_FAULT_UNCHECKED)
                .toList();
    }

    /** Each unit of a control supply is a load with an inrush of 30 A; the cell's devices state no band. */
    @Test
    void controlSuppliesHandTheirInrushOn() {
        var request = TestCell.request(2);
        var supplies = request.catalogue().controlSupplies().stream()
                .map(item -> Copies.with(item, "inputInrush", new Current(30)))
                .toList();
        var catalogue = Copies.with(request.catalogue(), "controlSupplies", supplies);

        var result = STUDY.supply(new StudyRequest(request.codeBasis(), catalogue, request.design()));

        assertThat(result.circuits())
                .filteredOn(circuit -> circuit.use() == LoadUse.CONTROL_SUPPLY)
                .isNotEmpty()
                .allSatisfy(circuit -> assertThat(
                                Objects.requireNonNull(circuit.inrush()).peak().si())
                        .isEqualTo(30.0 * circuit.loads().size()));
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.SUPPLY_INRUSH_NOT_JUDGED)
                .extracting(Finding::pointer)
                .containsOnly("/design/controlPower", "/design/mains");
    }

    private static StudyRequest withLetThrough(StudyRequest request, double energy) {
        Catalogue c = request.catalogue();
        List<ProtectiveDevice> devices = c.protectiveDevices().stream()
                .map(d -> Copies.with(
                        Copies.with(d, "clearingPoints", null), "letThroughEnergy", new JouleIntegral(energy)))
                .toList();
        var stocked = Copies.with(c, "protectiveDevices", devices);
        return new StudyRequest(request.codeBasis(), stocked, request.design());
    }

    /** 30 ms and 0.4 s of a controlled stop against the 20-odd ms a control supply lasts. */
    @Test
    void controlPowerIsHeldAgainstTheLongestStop() {
        assertThat(STUDY.controlPower(TestCell.request(2)).findings())
                .filteredOn(f -> f.code() == FindingCode.CONTROL_STOP_OUTLASTS_HOLD_UP)
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.limit()).isEqualTo(new Time(0.03 + 0.4)));
    }

    @Test
    void stoppingIsPartOfTheSystem() {
        StudyResult result = STUDY.system(TestCell.request(2));
        assertThat(result.stopping().zones()).singleElement().satisfies(zone -> {
            assertThat(zone.stoppingTime()).isEqualTo(new Time(0.03 + 0.4));
            assertThat(zone.axes()).hasSize(2);
        });
        // guides of 0.05 and losses stop 40 kg on a level belt without any brake
        assertThat(result.stopping().powerLosses())
                .allSatisfy(loss -> assertThat(loss.stoppingTime()).isNotNull());
    }
}
