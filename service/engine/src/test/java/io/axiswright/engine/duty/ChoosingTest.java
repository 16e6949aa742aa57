package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.GearChoice;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drive units with gear units, against a search that works everything out. */
class ChoosingTest {

    /** What peaks between the instants that the other definition looks at may be higher by so much. */
    private static final double SAMPLING = 1.01;

    @ParameterizedTest
    @ValueSource(longs = {9001, 9002, 9003})
    void saysWhatAnExhaustiveSearchSays(long seed) {
        RandomShop shop = new RandomShop(seed);
        int geared = 0;
        int missed = 0;
        for (int n = 0; n < 80; n++) {
            AxisDuty duty = compare(shop.next("seed " + seed + " axis " + n, 8, 4));
            geared += duty.gearUnit() == null ? 0 : 1;
            missed += duty.feasible() ? 0 : 1;
        }
        assertThat(geared).as("seed " + seed).isGreaterThan(5);
        assertThat(missed).as("seed " + seed).isGreaterThan(0);
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(longs = {9101, 9102, 9103})
    void saysSoOfFourThousandCandidates(long seed) {
        compare(new RandomShop(seed).next("seed " + seed, 200, 20));
    }

    private static AxisDuty compare(DutyRequest request) {
        AxisDuty duty = new DutySizing().size(request).axes().getFirst();
        Axis axis = request.axes().getFirst();
        ExhaustiveChoice all = new ExhaustiveChoice(
                axis, GearedLoad.all(axis, request), Offer.onMains(request), new BrakeStock(request.holdingBrakes()));
        assertThat(duty.feasibleCandidates()).as(axis.id()).isEqualTo(all.holding.size());
        assertThat(duty.rejectedCandidates()).as(axis.id()).isEqualTo(all.broken.size());
        String chosen = name(duty.driveUnit(), duty.gearUnit(), duty.ventilationKit());
        assertThat(chosen)
                .as(axis.id())
                .isEqualTo(
                        duty.feasible()
                                ? all.best().name()
                                : name(duty.candidates().getFirst()));
        List<Candidate> holding =
                duty.candidates().stream().filter(Candidate::feasible).toList();
        List<ExhaustiveChoice.Tried> cheapest = all.holding.stream().limit(20).toList();
        assertThat(holding.stream().map(ChoosingTest::name))
                .as(axis.id())
                .isEqualTo(cheapest.stream().map(ExhaustiveChoice.Tried::name).toList());
        assertThat(holding.stream().map(Candidate::use))
                .as(axis.id())
                .isEqualTo(
                        cheapest.stream().map(ExhaustiveChoice.Tried::highest).toList());
        misses(duty, all);
        return duty;
    }

    /** Each miss is as far off as the other definition says, and none is nearer than those listed; both up to its sampling. */
    private static void misses(AxisDuty duty, ExhaustiveChoice all) {
        Map<String, ExhaustiveChoice.Tried> unlisted = new HashMap<>();
        all.broken.forEach(tried -> unlisted.put(tried.name(), tried));
        double farthest = 0;
        for (Candidate miss : duty.candidates()) {
            if (miss.feasible()) {
                continue;
            }
            ExhaustiveChoice.Tried tried = Objects.requireNonNull(unlisted.remove(name(miss)));
            double shortfall = Objects.requireNonNull(miss.shortfall());
            assertThat(miss.limit()).as(tried.name()).isEqualTo(tried.broken());
            assertThat(miss.use())
                    .as(tried.name())
                    .isEqualTo(tried.uses()[miss.limit().ordinal()]);
            assertThat(shortfall)
                    .as(duty.axis() + " " + tried.name())
                    .isGreaterThanOrEqualTo(all.shortfall(tried) * (1 - 2e-6))
                    .isLessThanOrEqualTo(all.shortfall(tried) * SAMPLING)
                    .isGreaterThanOrEqualTo(farthest);
            farthest = shortfall;
        }
        if (!unlisted.isEmpty()) {
            assertThat(duty.candidates().stream().filter(candidate -> !candidate.feasible()))
                    .hasSize(20);
        }
        for (ExhaustiveChoice.Tried tried : unlisted.values()) {
            assertThat(all.shortfall(tried) * SAMPLING).as(tried.name()).isGreaterThanOrEqualTo(farthest);
        }
    }

    private static String name(Candidate candidate) {
        return name(candidate.driveUnit(), candidate.gearUnit(), candidate.ventilationKit());
    }

    private static String name(@Nullable String unit, @Nullable String gear, @Nullable String kit) {
        return unit + " " + (gear == null ? "-" : gear) + " " + (kit == null ? "-" : kit);
    }

    @Test
    void cheaperCandidateThatHoldsNeverMakesItDearer() {
        RandomShop shop = new RandomShop(9201);
        int cheaper = 0;
        for (int n = 0; n < 40; n++) {
            DutyRequest request = shop.next("seed 9201 axis " + n, 6, 3);
            Candidate before = new DutySizing()
                    .size(request)
                    .axes()
                    .getFirst()
                    .candidates()
                    .getFirst();
            if (!before.feasible() || before.gearUnit() == null || before.price() == null) {
                continue;
            }
            GearUnit bought = request.gearUnits().stream()
                    .filter(g -> g.id().equals(before.gearUnit()))
                    .findFirst()
                    .orElseThrow();
            List<GearUnit> more = new ArrayList<>(request.gearUnits());
            more.add(RandomShop.gear(
                    "cheaper",
                    bought.ratio(),
                    bought.nominalTorque().si(),
                    bought.highestInputSpeed().si(),
                    1));
            Candidate after = new DutySizing()
                    .size(new DutyRequest(
                            request.site(),
                            request.mains(),
                            request.axes(),
                            request.stopZones(),
                            request.driveUnits(),
                            request.holdingBrakes(),
                            request.ventilationKits(),
                            more))
                    .axes()
                    .getFirst()
                    .candidates()
                    .getFirst();
            assertThat(Objects.requireNonNull(after.price()).amount())
                    .as("axis " + n)
                    .isLessThan(before.price().amount());
            cheaper++;
        }
        assertThat(cheaper).isGreaterThan(3);
    }

    private static final DriveSelection CHOOSE =
            new DriveWish().item("u").gear(GearChoice.CHOOSE).made();

    /** 10 kg·m² through 1 rad in 0.5 s and back by the 3-4-5 law. */
    private static Axis table(DriveSelection drive, double time) {
        Move move = Fixtures.turn(1, time, new Polynomial345());
        return Fixtures.axis("t", Fixtures.table(10, 0, 1), null, drive, move);
    }

    private static DutyResult size(Axis axis, double unitTorque, GearUnit... gears) {
        return new DutySizing()
                .size(new DutyRequest(
                        Fixtures.SITE,
                        Fixtures.MAINS,
                        List.of(axis),
                        List.of(),
                        List.of(Fixtures.unit("u", "F1", unitTorque, 400, 100)),
                        List.of(),
                        List.of(),
                        List.of(gears)));
    }

    /**
     * Two units of one price, both rated for the mains they are on: the one with more torque to spare comes first, wherever it
     * stands. 0.01 kg·m² through 1 rad in 0.5 s by the 3-4-5 law has a peak of 0.01·5.7735·1/0.25 = 0.231 N·m, so units of 0.1
     * and 10 N·m (intermittent 0.3 and 30 N·m) use 0.77 and some 0.01 of their curves at the least, both of the voltage 1/1.1.
     */
    @Test
    void atOnePriceTheLargerMarginComesFirst() {
        Axis axis = Fixtures.axis(
                "t",
                Fixtures.table(0.01, 0, 1),
                null,
                Fixtures.ANY,
                Fixtures.turn(1, 0.5, new Polynomial345()),
                Fixtures.dwell(5));
        var tight = Fixtures.unit("tight", "F1", 0.1, 400, 1e-6, 60, 100);
        var ample = Fixtures.unit("ample", "F1", 10, 400, 1e-6, 60, 100);
        for (List<DriveUnit> units : List.of(List.of(tight, ample), List.of(ample, tight))) {
            DutyResult result = new DutySizing().size(Fixtures.request(List.of(axis), units));
            List<Candidate> candidates = result.axes().getFirst().candidates();
            assertThat(candidates).extracting(Candidate::driveUnit).containsExactly("ample", "tight");
            assertThat(candidates).allMatch(candidate -> candidate.feasible() && candidate.limit() != DutyLimit.FEED);
            assertThat(candidates.getLast().use()).isGreaterThan(0.01 * 5.7735 / 0.25 / 0.3);
            assertThat(candidates.getFirst().use()).isLessThan(0.2);
        }
    }

    /** 0.001 kg·m² through 100 rad in 0.5 s by the 3-4-5 law: 375 rad/s, 2309.4 rad/s², 2.3 N·m. */
    private static final Axis FAST = Fixtures.axis(
            "fast",
            Fixtures.table(1e-3, 0, 1),
            null,
            Fixtures.ANY,
            Fixtures.turn(100, 0.5, new Polynomial345()),
            Fixtures.dwell(5));

    private static DutyResult chosen(DriveUnit... units) {
        return new DutySizing().size(Fixtures.request(List.of(FAST), List.of(units)));
    }

    /** At low line, 0.9 of the rated voltage, a unit for 375/(0.9·1.01) rad/s is one percent too slow: so are moves of 1.01 times. */
    @Test
    void aLittleTooSlowIsNearerThanAHundredfoldTooWeak() {
        DriveUnit slow = Fixtures.unit("slow", "F1", 10, 375 / (0.9 * 1.01), 1e-6, 60, 100);
        DriveUnit weak = Fixtures.unit("weak", "F1", 0.005, 1000, 1e-6, 60, 100);
        for (DutyResult result : List.of(chosen(slow, weak), chosen(weak, slow))) {
            AxisDuty duty = result.axes().getFirst();
            assertThat(duty.driveUnit()).isEqualTo("slow");
            assertThat(duty.candidates()).extracting(Candidate::driveUnit).containsExactly("slow", "weak");
            Candidate miss = duty.candidates().getFirst();
            assertThat(miss.shortfall()).isCloseTo(1.01, within(1e-9));
            assertThat(miss.limit()).isEqualTo(DutyLimit.SPEED);
            assertThat(miss.value().si()).isCloseTo(375, within(1e-9));
            assertThat(miss.allowed().si()).isCloseTo(375 / 1.01, within(1e-9));
            assertThat(duty.longerMoves()).isCloseTo(1.01, within(1e-3));
            assertThat(result.findings())
                    .extracting(Finding::code)
                    .contains(FindingCode.DUTY_NO_DRIVE_UNIT, FindingCode.DUTY_SPEED_HIGH)
                    .doesNotContain(FindingCode.DUTY_PEAK_TORQUE_HIGH);
        }
    }

    /**
     * A curve that falls to no torque at w0 = 375/1.01 from 30 N·m: enlarged s times it is 30·s − (30/w0)·w, so s is the highest
     * of T/30 + w/w0 over the move, here found by looking at many instants of the 3-4-5 law (w ∝ 30x² − 60x³ + 30x⁴).
     */
    @Test
    void aCurveThatEndsWithoutTorqueIsNoInfiniteMiss() {
        double end = 375 / (0.9 * 1.01);
        DriveUnit plain = Fixtures.unit("slow", "F1", 10, end, 1e-6, 60, 100);
        DriveUnit slow =
                Copies.with(plain, "intermittentCurve", List.of(Fixtures.point(0, 30), Fixtures.point(end, 0)));
        double expected = 0;
        for (int k = 0; k <= 100_000; k++) {
            double x = k / 100_000.0;
            double speed = 100 / 0.5 * 30 * x * x * (1 - x) * (1 - x);
            double torque = 1.001e-3 * 100 / 0.25 * 60 * x * (1 - x) * (1 - 2 * x);
            expected = Math.max(expected, Math.abs(torque) / 30 + speed / (0.9 * end));
        }
        DutyResult result = chosen(slow);
        assertThat(result.axes().getFirst().candidates().getFirst().shortfall()).isCloseTo(expected, within(1e-8));
        assertThat(expected).isBetween(1.01, 1.05);
        assertThat(result.findings())
                .extracting(Finding::text)
                .noneMatch(text -> text.contains(" 0.0 N.m") || text.contains(" 0 N.m"));
    }

    /** Where the rms speed is beyond the continuous curve, that curve says nothing of torque. */
    @Test
    void tooFastForEverIsSaidAsASpeed() {
        DriveUnit unit = Copies.with(
                Fixtures.unit("short", "F1", 10, 1000, 1e-6, 60, 100),
                "continuousCurve",
                List.of(Fixtures.point(0, 10), Fixtures.point(50, 9)));
        DutyResult result = chosen(unit);
        // mean square of the 3-4-5 law's speed (h/T)²·10/7 for 0.5 s of 5.5 s
        double rms = 200 * Math.sqrt(10.0 / 7 * 0.5 / 5.5);
        LimitUse continuous = result.axes().getFirst().limits().stream()
                .filter(use -> use.limit() == DutyLimit.CONTINUOUS)
                .findFirst()
                .orElseThrow();
        assertThat(continuous.value().si()).isCloseTo(rms, within(1e-9));
        assertThat(continuous.allowed()).isEqualTo(new AngularSpeed(50));
        assertThat(result.axes().getFirst().candidates().getFirst().shortfall()).isCloseTo(rms / 50, within(1e-9));
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.DUTY_RMS_SPEED_HIGH);
    }

    @Test
    void chosenGearIsAsIfStated() {
        GearUnit unit = RandomShop.gear("g", 20, 1000, 1000, 10);
        AxisDuty chosen = size(table(CHOOSE, 0.5), 20, unit).axes().getFirst();
        Axis stated = Fixtures.axis(
                "t", Fixtures.table(10, 0, 1), unit.gear(), Fixtures.ANY, Fixtures.turn(1, 0.5, new Polynomial345()));
        AxisDuty as = size(stated, 20).axes().getFirst();
        assertThat(chosen.gearUnit()).isEqualTo("g");
        assertThat(chosen.figures()).isEqualTo(as.figures());
        assertThat(chosen.unit()).isEqualTo(as.unit());
        assertThat(as.gearUnit()).isNull();
    }

    /** Peak acceleration of the 3-4-5 law 5.7735·h/T², mean of its square (120/7)·h²/T⁴, peak speed 1.875·h/T. */
    @Test
    void gearUnitBearsTheLoadBeyondItOnly() {
        AxisDuty duty = size(table(CHOOSE, 0.5), 20, RandomShop.gear("g", 20, 1000, 1000, 10))
                .axes()
                .getFirst();
        assertThat(value(duty, DutyLimit.GEAR_PEAK)).isCloseTo(10 * 5.773502692 * 4, within(1e-6));
        assertThat(value(duty, DutyLimit.GEAR_NOMINAL)).isCloseTo(10 * 4 * Math.sqrt(120.0 / 7), within(1e-9));
        assertThat(value(duty, DutyLimit.GEAR_SPEED)).isCloseTo(20 * 1.875 / 0.5, within(1e-9));
    }

    private static double value(AxisDuty duty, DutyLimit limit) {
        return duty.limits().stream()
                .filter(use -> use.limit() == limit)
                .findFirst()
                .orElseThrow()
                .value()
                .si();
    }

    @Test
    void weakGearUnitIsSaidToBeWeak() {
        List<Finding> findings = size(table(CHOOSE, 0.5), 5, RandomShop.gear("g", 20, 100, 74, 10))
                .findings();
        assertThat(findings)
                .extracting(Finding::code)
                .contains(
                        FindingCode.DUTY_GEAR_SPEED_HIGH,
                        FindingCode.DUTY_GEAR_RMS_TORQUE_HIGH,
                        FindingCode.DUTY_GEAR_PEAK_TORQUE_HIGH,
                        FindingCode.DUTY_LONGER_MOVES_HOLD);
        assertThat(findings)
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_LONGER_MOVES_HOLD)
                .extracting(Finding::pointer)
                .containsExactly("/design/axes/0/cycle");
    }

    @Test
    void missHoldsWithLongerMoves() {
        GearUnit gear = RandomShop.gear("g", 20, 100, 74, 10);
        double factor = Objects.requireNonNull(
                size(table(CHOOSE, 0.5), 5, gear).axes().getFirst().longerMoves());
        assertThat(size(table(CHOOSE, 0.5 * factor), 5, gear).axes().getFirst().feasible())
                .isTrue();
        assertThat(size(table(CHOOSE, 0.5 * (factor - 0.002)), 5, gear)
                        .axes()
                        .getFirst()
                        .feasible())
                .isFalse();
    }

    @Test
    void torqueAtTheMotorShaftLeavesNoGearToChoose() {
        TorqueCourse course = new TorqueCourse(
                List.of(
                        new TorquePoint(new Time(0), new AngularSpeed(0), new Torque(1)),
                        new TorquePoint(new Time(1), new AngularSpeed(1), new Torque(-1)),
                        new TorquePoint(new Time(2), new AngularSpeed(0), new Torque(1))),
                TorquePlace.MOTOR_SHAFT,
                null);
        Axis axis = Fixtures.axis("t", Fixtures.table(10, 0, 1), null, CHOOSE, course);
        assertThatThrownBy(() -> size(axis, 5))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .anyMatch(fault -> fault.pointer().equals("/design/axes/0/drive/gear")));
    }
}
