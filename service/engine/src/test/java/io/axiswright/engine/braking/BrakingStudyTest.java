package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.ZONE;
import static io.axiswright.engine.braking.BrakingFixtures.axis;
import static io.axiswright.engine.braking.BrakingFixtures.brakingUnit;
import static io.axiswright.engine.braking.BrakingFixtures.course;
import static io.axiswright.engine.braking.BrakingFixtures.shuttle;
import static io.axiswright.engine.braking.BrakingFixtures.stretch;
import static io.axiswright.engine.braking.BrakingFixtures.study;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BrakingStudyTest {

    private static final DriveUnit UNIT = unit(1.5, 20, 1e-3, 820);

    /** 0.02 kg·m² at 250 rad/s is 625 J; 1 mF takes ½·1e-3·(820² − 746.7²) = 57.4 J between high line and trip. */
    private static BrakingAxis heavy(int index, @Nullable String group) {
        return axis(index, group, ZONE.id(), UNIT, shuttle(0.02, 250, 0.2, 0.5, 0.6), 0.02, 0.2);
    }

    private static BrakingAxis light(int index) {
        return axis(index, null, ZONE.id(), UNIT, shuttle(0.001, 150, 0.1, 0.3, 0.5), 0.001, 0.1);
    }

    private static GroupBraking only(BrakingResult result) {
        assertThat(result.groups()).hasSize(1);
        return result.groups().getFirst();
    }

    private static double kelvins(BrakingCase one) {
        Temperature temperature = one.resistorTemperature();
        assertThat(temperature).isNotNull();
        return temperature == null ? 0 : temperature.si();
    }

    private static List<FindingCode> codes(BrakingResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    @Test
    void rectifiedVoltageAtHighLine() {
        // 480 V + 10 % is 746.7 V, nominal 678.8 V
        GroupBraking group = only(study(List.of(light(0))));
        assertThat(group.floorVoltage().si()).isCloseTo(746.7, within(0.05));
        assertThat(group.nominalVoltage().si()).isCloseTo(678.8, within(0.05));
    }

    @Test
    void onePhaseUnitsTakeTheNearerOfLineAndNeutral() {
        DriveUnit neutral = unit(Feed.ONE_PHASE, 230, 1.5, 20, 1e-3, 900);
        assertThat(only(study(List.of(axis(0, null, neutral, new Course(List.of())))))
                        .nominalVoltage()
                        .si())
                .isCloseTo(Math.sqrt(2) * 480 / Math.sqrt(3), within(1e-9));
        DriveUnit lines = unit(Feed.ONE_PHASE, 400, 1.5, 20, 1e-3, 900);
        assertThat(only(study(List.of(axis(0, null, lines, new Course(List.of())))))
                        .nominalVoltage()
                        .si())
                .isCloseTo(Math.sqrt(2) * 480, within(1e-9));
    }

    @Test
    void unitsFedFromABusStandAtTheirRatedVoltageUnlessARectifierIsOnIt() {
        DriveUnit fed = unit(Feed.DC_BUS, 600, 1.5, 20, 1e-3, 900);
        BrakingAxis alone = axis(0, "bus", fed, new Course(List.of()));
        assertThat(only(study(List.of(alone))).floorVoltage().si()).isCloseTo(660, within(1e-9));
        GroupBraking mixed = only(study(List.of(alone, axis(1, "bus", UNIT, new Course(List.of())))));
        assertThat(mixed.floorVoltage().si()).isCloseTo(746.7, within(0.05));
        assertThat(mixed.tripVoltage().si()).isCloseTo(820, within(1e-9));
        assertThat(mixed.capacitance().si()).isCloseTo(2e-3, within(1e-15));
    }

    @Test
    void aLightAxisIsAbsorbed() {
        GroupBraking group = only(study(List.of(light(0)), brakingUnit("b", 100, 40)));
        // 0.001·150²/2 = 11.25 J even without loss
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.ABSORBED);
        assertThat(group.brakingUnit()).isNull();
        assertThat(group.rejected()).isEmpty();
        assertThat(group.cases())
                .allSatisfy(c -> assertThat(c.resistorTemperature()).isNull());
    }

    @Test
    void lossesAloneMayKeepTheBusUnderItsTrip() {
        // ½·0.01·150² = 112.5 J against 57.4 J; copper takes (7.5/0.75)² W·0.2 s = 20 J, standby 400 W·0.2 s = 80 J
        DriveUnit lossy = unit(0.75, 400, 1e-3, 820);
        GroupBraking group = only(study(List.of(axis(0, null, lossy, shuttle(0.01, 150, 0.2, 0.3, 0.5)))));
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.ABSORBED_WITH_LOSSES);
    }

    @Test
    void aHeavyAxisNeedsTheCheapestUnitThatFits() {
        BrakingResult result = study(
                List.of(heavy(0, null)),
                brakingUnit("dear", 300, 40),
                brakingUnit("unpriced", null, 40),
                brakingUnit("cheap", 200, 40));
        GroupBraking group = only(result);
        assertThat(group.verdict()).as("%s", group.rejected()).isEqualTo(BrakingVerdict.NEEDS_BRAKING_UNIT);
        assertThat(group.brakingUnit()).isEqualTo("cheap");
        assertThat(group.cases()).extracting(BrakingCase::kind).containsExactly(CaseKind.CYCLE, CaseKind.STOP_ZONE);
        assertThat(group.cases())
                .allSatisfy(c -> assertThat(c.peakVoltage().si()).isLessThan(820));
        // whenever it conducts the resistor takes V_on²/R, at the lower end of its tolerance
        assertThat(group.cases().getFirst().peakResistorPower().si())
                .isGreaterThanOrEqualTo(780 * 780 / 36.0 * (1 - 1e-12));
        // the stop comes on top of the hottest instant of the cycle: 500 J/K, less what cools in at most 0.2 s at 450 s
        double hottest = kelvins(group.cases().getFirst());
        double pulse = group.cases().get(1).resistorEnergy().si();
        assertThat(kelvins(group.cases().get(1)) - hottest)
                .isBetween(pulse / 500 - (hottest - 313.15) * 0.2 / 450, pulse / 500);
        assertThat(codes(result))
                .contains(FindingCode.BRAKING_RESISTOR_HOT, FindingCode.BRAKING_BUS_STORED_ENERGY)
                .doesNotContain(FindingCode.BRAKING_BUS_OVERVOLTAGE, FindingCode.BRAKING_BUS_SHARED);
        assertThat(result.derivations())
                .extracting(d -> d.symbol())
                .contains("V_floor", "E_absorbable", "V_peak CYCLE", "V_peak STOP_ZONE front", "I_chopper", "P_mean");
    }

    /**
     * Worked by hand. Heavy: T = 0.02·250/0.2 = 25 N·m; a cycle of 1.5 s loses (25/1.5)² W·0.4 s + (0.2/1.5)² W·0.5 s in copper,
     * 20 W·1.5 s standing by and 0.2 N·m·250 rad/s·0.5 s in running: 166.12 J; slowing down returns what is left of
     * 25 N·m·250 rad/s − 277.78 W − 20 W = 5952.22 W, falling by 31 250 W/s: 5952.22²/62 500 = 566.86 J. Light: T = 1.5 N·m; a
     * cycle of 1 s loses 0.2 J + 0.0053 J + 20 J + 9 J and returns (225 − 21)²/4500 = 9.248 J.
     */
    @Test
    void busesWithTheirOwnPeriodsAddUpToTheMachine() {
        BrakingTotals totals = study(List.of(heavy(0, null), light(1)), brakingUnit("b", 200, 40))
                .totals();
        double heavyLoss = 25 * 25 / 2.25 * 0.4 + 0.04 / 2.25 * 0.5 + 30 + 25;
        double lightLoss = 0.2 + 0.04 / 2.25 * 0.3 + 20 + 9;
        assertThat(totals.meanSuppliedPower().si() - totals.meanResistorPower().si())
                .isCloseTo(heavyLoss / 1.5 + lightLoss, withPercentage(1e-6));
        double net = 6250 - 25 * 25 / 2.25 - 20;
        assertThat(totals.meanReturnedPower().si())
                .isCloseTo(net * net / 62_500 / 1.5 + 204 * 204 / 4500.0, withPercentage(1e-6));
        // the heavy axis returns 566.86 J a cycle, of which its capacitor takes no more than ½·1e-3·(820² − 746.7²) J
        assertThat(totals.meanResistorPower().si())
                .isBetween((net * net / 62_500 - 57.42) / 1.5, net * net / 62_500 / 1.5);
        double line = 480 * 1.1;
        assertThat(totals.absorbableEnergy().si())
                .isCloseTo(2 * 0.5e-3 * (820 * 820 - 2 * line * line), withPercentage(1e-6));
    }

    @Test
    void everyLimitOfABrakingUnitRejects() {
        GroupBraking group = only(study(
                List.of(heavy(0, null)),
                brakingUnit("on", 1, 825, 765, 40, 0.1, 200, 5000, 50_000, 500),
                brakingUnit("off", 2, 780, 740, 40, 0.1, 200, 5000, 50_000, 500),
                brakingUnit("current", 3, 780, 765, 40, 0.1, 21, 5000, 50_000, 500),
                brakingUnit("resistance", 4, 780, 765, 400, 0.1, 200, 5000, 50_000, 500),
                brakingUnit("pulse", 5, 780, 765, 40, 0.1, 200, 5000, 100, 500),
                brakingUnit("mean", 6, 780, 765, 40, 0.1, 200, 50, 50_000, 500),
                brakingUnit("heat", 7, 780, 765, 40, 0.1, 200, 5000, 50_000, 373),
                brakingUnit("fits", 8, 780, 765, 40, 0.1, 200, 5000, 50_000, 500)));
        assertThat(group.brakingUnit()).isEqualTo("fits");
        assertThat(group.rejected())
                .extracting(RejectedUnit::unit, RejectedUnit::broken)
                .containsExactly(
                        tuple("on", BrakingLimit.SWITCH_ON_ABOVE_TRIP),
                        tuple("off", BrakingLimit.SWITCH_OFF_BELOW_LINE),
                        tuple("current", BrakingLimit.CHOPPER_CURRENT),
                        tuple("resistance", BrakingLimit.BUS_VOLTAGE),
                        tuple("pulse", BrakingLimit.PULSE_ENERGY),
                        tuple("mean", BrakingLimit.CONTINUOUS_POWER),
                        tuple("heat", BrakingLimit.RESISTOR_TEMPERATURE));
        // 780 V / (40 Ω · 0.9) = 21.67 A
        assertThat(group.rejected().get(2).value().si()).isCloseTo(21.67, within(0.005));
        assertThat(group.rejected().get(2).limit().si()).isEqualTo(21);
    }

    @Test
    void noUnitThatFitsIsAViolation() {
        BrakingResult result = study(List.of(heavy(3, null)), brakingUnit("weak", 1, 400));
        GroupBraking group = only(result);
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.NONE_FITS);
        assertThat(group.cases().getFirst().tripInstant()).isNotNull();
        Finding finding = result.findings().getFirst();
        assertThat(finding.code()).isEqualTo(FindingCode.BRAKING_BUS_OVERVOLTAGE);
        assertThat(finding.pointer()).isEqualTo("/design/axes/3");
        assertThat(finding.text()).contains("axis3", "820 V");
    }

    @Test
    void lineAboveTripIsSaidAsSuch() {
        BrakingResult result =
                study(List.of(axis(0, null, unit(1.5, 20, 1e-3, 740), new Course(List.of()))), brakingUnit("b", 1, 40));
        assertThat(only(result).verdict()).isEqualTo(BrakingVerdict.NONE_FITS);
        assertThat(codes(result))
                .contains(FindingCode.BRAKING_LINE_ABOVE_TRIP)
                .doesNotContain(FindingCode.BRAKING_BUS_OVERVOLTAGE);
    }

    /**
     * A load lowered at constant speed, by hand: −10 N·m at 100 rad/s returns 1000 W; copper takes (10/2)² = 25 W, standby
     * 15 W: 960 W for 2 s. 1 mF between 780 V and 765 V holds 11.6 J, 1920 J come: on average 960 W·2 s in 4 s less what
     * charges the bus, and every switching passes 11.6 J at 780 V²/(40 Ω·1.1) = 13.8 kW.
     */
    @Test
    void aVerticalAxisReturnsPowerAtConstantSpeed() {
        DriveUnit vertical = unit(2, 15, 1e-3, 820);
        Course hoist = course(stretch(2, 100, 0, -10), stretch(2, -100, 0, -11));
        GroupBraking group = only(study(List.of(axis(0, null, vertical, hoist)), brakingUnit("b", 1, 40)));
        BrakingCase cycle = group.cases().getFirst();
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.NEEDS_BRAKING_UNIT);
        assertThat(cycle.returnedEnergy().si()).isCloseTo(1920, within(1e-9));
        // lifting: 11·100 + 5.5² + 15 = 1145.25 W for 2 s
        assertThat(cycle.drawnEnergy().si()).isCloseTo(2290.5, within(1e-9));
        assertThat(cycle.peakVoltage().si()).isCloseTo(780, within(1e-9));
        // at the end of lowering the bus holds between ½C(765² − 746.7²) = 13.8 J and ½C(780² − 746.7²) = 25.4 J
        assertThat(cycle.resistorEnergy().si()).isBetween(1920 - 25.5, 1920 - 13.8);
        assertThat(cycle.meanResistorPower().si())
                .isCloseTo(cycle.resistorEnergy().si() / 4, withPercentage(1e-10));
        // the chopper first works once 25.4 J have come: 26.4 ms at 960 W; by then V = √(746.7² + 2·960·t/C)
        double first = (780 * 780 - 2 * Math.pow(480 * 1.1, 2)) * 1e-3 / (2 * 960);
        assertThat(cycle.peakInstant())
                .isNotNull()
                .satisfies(instant -> assertThat(instant.si()).isCloseTo(first, within(1e-9)));
    }

    /** Lowering so slowly that the loss exceeds the power of the load returns nothing: v_z = loss/(m·g·η). */
    @Test
    void loweringSlowerThanTheLossReturnsNothing() {
        DriveUnit vertical = unit(2, 15, 1e-3, 820);
        double zero = (25 + 15) / 10.0;
        assertThat(lowering(vertical, zero * 0.999).returnedEnergy().si()).isZero();
        assertThat(lowering(vertical, zero * 1.001).returnedEnergy().si()).isPositive();
    }

    private static BrakingCase lowering(DriveUnit unit, double speed) {
        return only(study(List.of(axis(0, null, unit, course(stretch(2, speed, 0, -10), stretch(2, 0, 0, 0))))))
                .cases()
                .getFirst();
    }

    /** It gains energy with every cycle and never motors: sooner or later it trips, however small the gain. */
    @Test
    void aBusThatGainsEveryCycleTripsAtLast() {
        DriveUnit vertical = unit(2, 0, 1e-3, 820);
        Course sinking = course(stretch(1, 1, 0, -0.1), stretch(1, 0, 0, 0));
        GroupBraking group = only(study(List.of(axis(0, null, vertical, sinking))));
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.NONE_FITS);
        BrakingCase cycle = group.cases().getFirst();
        // 0.0975 J a cycle, some 590 cycles: the peak passes the trip by no more than one cycle's energy
        assertThat(cycle.peakVoltage().si()).isBetween(820.0, Math.sqrt(820 * 820 + 2 * 0.0975 / 1e-3));
    }

    @Test
    void aChopperOutOfStepWithTheCycleIsSaidAsSuch() {
        DriveUnit vertical = unit(2, 0, 1e-3, 820);
        Course sinking = course(stretch(1, 10, 0, -1), stretch(1, 0, 0, 0));
        BrakingResult result = study(List.of(axis(0, null, vertical, sinking)), brakingUnit("b", 1, 40));
        assertThat(only(result).verdict()).isEqualTo(BrakingVerdict.NEEDS_BRAKING_UNIT);
        assertThat(only(result).cycleBasis()).isEqualTo(CycleBasis.UNSETTLED);
        assertThat(codes(result)).contains(FindingCode.BRAKING_CYCLE_UNSETTLED);
        assertThat(only(result).cases().getFirst().peakVoltage().si()).isCloseTo(780, within(1e-9));
    }

    /**
     * A bus group by hand. Two axes of 0.01 kg·m² run 0 → 200 rad/s and back in 0.2 s each, 10 N·m, one just opposite to the other;
     * each loses (10/1.5)² = 44.44 W in copper and 20 W standing by.
     *
     * <p>Apart, on 1 mF: slowing down returns 2000 − 64.44 = 1935.56 W, falling by 10 kW/s: 187.32 J; ½·1 mF·V² rises from 278.78 J
     * (√2·528 V) to 466.10 J: 965.5 V, above the trip at 820 V.
     *
     * <p>Together, on 2 mF, in each half of the cycle: p = 10·(200 − 1000·t) − 10·1000·t − 2·64.44 = 1871.11 W − 20 kW/s·t. Returned until
     * 93.56 ms: 1871.11²/40 000 = 87.526 J; taken from then on: 2128.89²/40 000 = 113.304 J, of which the rectifier supplies the 25.778 J that
     * the bus does not hold. It rises from 557.57 J to 645.09 J: 803.2 V, and without loss, 2000²/40 000 = 100 J, to 810.9 V.
     */
    @Test
    void sharingABusNetsAxesThatMoveAgainstEachOther() {
        Course first = course(stretch(0.2, 0, 1000, 10), stretch(0.2, 200, -1000, -10));
        Course second = course(stretch(0.2, 200, -1000, -10), stretch(0.2, 0, 1000, 10));
        BrakingResult apart = study(List.of(axis(0, null, UNIT, first), axis(1, null, UNIT, second)));
        assertThat(apart.groups()).hasSize(2);
        assertThat(apart.groups()).allSatisfy(g -> assertThat(g.verdict()).isEqualTo(BrakingVerdict.NONE_FITS));
        BrakingResult shared = study(List.of(axis(0, "bus", UNIT, first), axis(1, "bus", UNIT, second)));
        assertThat(apart.groups().getFirst().cases().getFirst().returnedEnergy().si())
                .isCloseTo(187.32, within(0.005));
        // without a unit the cycle trips in its first ramp down: by then it has come to 965.5 V
        assertThat(apart.groups().getFirst().cases().getFirst().peakVoltage().si())
                .isCloseTo(965.5, within(0.05));
        GroupBraking group = only(shared);
        assertThat(group.axes()).containsExactly("axis0", "axis1");
        assertThat(group.capacitance().si()).isCloseTo(2e-3, within(1e-15));
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.ABSORBED);
        BrakingCase cycle = group.cases().getFirst();
        assertThat(cycle.returnedEnergy().si()).isCloseTo(2 * 87.526, within(0.002));
        assertThat(cycle.drawnEnergy().si()).isCloseTo(2 * 113.304, within(0.002));
        assertThat(cycle.suppliedEnergy().si()).isCloseTo(2 * 25.778, within(0.002));
        assertThat(cycle.resistorEnergy().si()).isZero();
        assertThat(cycle.startVoltage().si()).isCloseTo(746.70, within(0.005));
        assertThat(cycle.peakVoltage().si()).isCloseTo(803.18, within(0.005));
        assertThat(requireNonNull(cycle.peakInstant()).si()).isCloseTo(0.093556, within(1e-6));
        assertThat(codes(shared)).contains(FindingCode.BRAKING_BUS_SHARED);
    }

    @Test
    void aBusGroupNamedLikeAnAxisIsAnotherBus() {
        BrakingResult result = study(List.of(axis(0, "axis1", UNIT, new Course(List.of())), light(1)));
        assertThat(result.groups()).hasSize(2);
    }

    @Test
    void allZonesAtOnceStopOnOneBus() {
        var back = new StopZone("back", StopCategory.CATEGORY_2, new Time(0.1), new Time(0.2), null);
        BrakingAxis one = heavy(0, "bus");
        BrakingAxis two = new BrakingAxis(1, "axis1", "bus", "back", UNIT, one.course(), one.stopModel());
        var request = new BrakingRequest(
                BrakingFixtures.MAINS,
                BrakingFixtures.AMBIENT,
                List.of(one, two),
                List.of(BrakingFixtures.ZONE, back),
                List.of(brakingUnit("b", 1, 20)));
        BrakingResult result = new BrakingStudy().study(request);
        List<BrakingCase> cases = only(result).cases();
        assertThat(cases)
                .extracting(BrakingCase::kind)
                .containsExactly(
                        CaseKind.CYCLE,
                        CaseKind.STOP_ZONE,
                        CaseKind.STOP_ZONE,
                        CaseKind.STOP_ALL,
                        CaseKind.ZONE_AT_REST,
                        CaseKind.ZONE_AT_REST);
        // one zone stops just when the other axis brakes in its own cycle: for the bus no better than both stopping
        assertThat(cases.get(3).returnedEnergy().si())
                .isCloseTo(cases.get(1).returnedEnergy().si(), withPercentage(1e-9));
    }

    /** Without other axes the energy is the highest where the speed is, and so is the bus. */
    @Test
    void aStopIsBegunAtItsWorstInstant() {
        GroupBraking group = only(study(List.of(heavy(0, null)), brakingUnit("b", 1, 40)));
        BrakingCase stop = group.cases().get(1);
        assertThat(stop.criterion()).isEqualTo(StopCriterion.HIGHEST_VOLTAGE);
        assertThat(stop.worstInstant())
                .isNotNull()
                .satisfies(t -> assertThat(t.si()).isBetween(0.2, 0.7));
        assertThat(stop.provenVoltage())
                .isNotNull()
                .satisfies(v -> assertThat(v.si())
                        .isGreaterThanOrEqualTo(stop.peakVoltage().si())
                        .isCloseTo(stop.peakVoltage().si(), withPercentage(1e-4)));
    }

    @Test
    void anUncontrolledStopReturnsNothing() {
        var zone = new StopZone("front", StopCategory.CATEGORY_0, new Time(0.05), new Time(0.2), null);
        BrakingAxis axis = new BrakingAxis(0, "x", null, "front", UNIT, shuttle(0.001, 150, 0.1, 0.3, 0.5), null);
        BrakingResult result = new BrakingStudy()
                .study(new BrakingRequest(
                        BrakingFixtures.MAINS, BrakingFixtures.AMBIENT, List.of(axis), List.of(zone), List.of()));
        assertThat(result.groups()).allSatisfy(g -> assertThat(g.cases()).hasSize(1));
    }

    @Test
    void inputWithoutMeaningIsRefusedWithEveryFault() {
        BrakingAxis lost = new BrakingAxis(0, "x", null, "nowhere", UNIT, new Course(List.of()), null);
        var request = new BrakingRequest(
                BrakingFixtures.MAINS,
                BrakingFixtures.AMBIENT,
                List.of(lost, lost),
                List.of(BrakingFixtures.ZONE),
                List.of(brakingUnit("b", 1, 765, 780, 40, 0.1, 200, 5000, 50_000, 500)));
        assertThatThrownBy(() -> new BrakingStudy().study(request))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer, Fault::code)
                                .containsExactly(
                                        tuple("/axes/1/id", FaultCode.DUPLICATE_ID),
                                        tuple("/axes/0/stopZone", FaultCode.DANGLING_REFERENCE),
                                        tuple("/axes/1/stopZone", FaultCode.DANGLING_REFERENCE),
                                        tuple("/brakingUnits/0/chopperOff", FaultCode.INCONSISTENT)));
    }

    @Test
    void anEmptyRequestHasAnEmptyAnswer() {
        BrakingResult result = new BrakingStudy()
                .study(new BrakingRequest(
                        BrakingFixtures.MAINS, BrakingFixtures.AMBIENT, List.of(), List.of(), List.of()));
        assertThat(result.groups()).isEmpty();
        assertThat(result.findings()).isEmpty();
    }
}
