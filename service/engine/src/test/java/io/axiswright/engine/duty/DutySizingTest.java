package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.MAINS;
import static io.axiswright.engine.duty.Fixtures.SITE;
import static io.axiswright.engine.duty.Fixtures.ZONE;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.dwell;
import static io.axiswright.engine.duty.Fixtures.hoist;
import static io.axiswright.engine.duty.Fixtures.size;
import static io.axiswright.engine.duty.Fixtures.table;
import static io.axiswright.engine.duty.Fixtures.travel;
import static io.axiswright.engine.duty.Fixtures.turn;
import static io.axiswright.engine.duty.Fixtures.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The discipline from request to result. */
class DutySizingTest {

    private static final DriveSelection BRAKED = new DriveWish().braked(true).made();

    private static DriveSelection stated(String item, @Nullable Feed feed, boolean brake) {
        return new DriveWish().item(item).feed(feed).braked(brake).made();
    }

    private static Axis indexing(DriveSelection drive) {
        return axis("index", table(0.05, 0.5, 0.9), null, drive, turn(1, 0.4, new Triangular()), dwell(0.6));
    }

    private static Axis lift(DriveSelection drive, double load) {
        return axis(
                "lift",
                hoist(0.1, 0.001, load, 0, 0.9),
                Fixtures.gear(10, 0.95),
                drive,
                travel(0.5, 1, new Trapezoidal(0.3, 0.3)),
                dwell(0.5),
                travel(-0.5, 1, new Trapezoidal(0.3, 0.3)));
    }

    private static List<FindingCode> codes(DutyRequest request) {
        return new DutySizing()
                .size(request).findings().stream().map(Finding::code).toList();
    }

    private static List<FindingCode> codes(Axis axis, DriveUnit... units) {
        return codes(Fixtures.request(List.of(axis), List.of(units)));
    }

    @Test
    void cheapestThatHoldsIsChosen() {
        AxisDuty duty = size(
                indexing(ANY),
                unit("small", 0.3, 10),
                unit("dear", 8, 500),
                unit("fair", 6, 300),
                unit("free", 9, null));
        assertThat(duty.driveUnit()).isEqualTo("fair");
        assertThat(duty.feasible()).isTrue();
        assertThat(duty.candidates()).extracting(Candidate::driveUnit).containsExactly("fair", "dear", "free", "small");
        assertThat(duty.limits()).allMatch(use -> use.use() <= 1).hasSize(5);
        assertThat(duty.reversing()).isTrue();
    }

    @Test
    void figuresOfAnIndexingTable() {
        AxisDuty duty = size(indexing(ANY), unit("u", "F", 10, 400, 1e-3, 60, 1));
        double acceleration = 4 / 0.16;
        double up = (0.05 * acceleration + 0.5) / 0.9 + 1e-3 * acceleration;
        double down = (0.05 * acceleration - 0.5) * (2 - 1 / 0.9) + 1e-3 * acceleration;
        DutyFigures figures = duty.figures();
        assertThat(figures.peakTorque().si()).isCloseTo(up, within(1e-9));
        assertThat(figures.rmsTorque().si()).isCloseTo(Math.sqrt((up * up + down * down) * 0.2), within(1e-9));
        assertThat(figures.peakSpeed().si()).isCloseTo(5, within(1e-9));
        assertThat(figures.peakSpeedAt().si()).isCloseTo(0.2, within(1e-9));
        assertThat(figures.meanSpeed().si()).isCloseTo(1, within(1e-9));
        assertThat(figures.peakMotoringPower().si()).isCloseTo(5 * up, within(1e-9));
        assertThat(figures.peakReturnedPower().si()).isCloseTo(5 * down, within(1e-9));
        assertThat(figures.motoredEnergy().si()).isCloseTo(0.5 * up, within(1e-9));
        assertThat(figures.returnedEnergy().si()).isCloseTo(0.5 * down, within(1e-9));
        UnitFigures unit = java.util.Objects.requireNonNull(duty.unit());
        assertThat(unit.inertiaRatio()).isCloseTo(50, within(1e-9));
        assertThat(unit.copperLoss().si()).isCloseTo((up * up + down * down) * 0.2 / 1.2 / 1.2, within(1e-9));
        double input = 0.5 * up + up * up * 0.2 / 1.44 + 12 * 0.8;
        assertThat(unit.meanInputPower().si()).isBetween(input, input + 12);
        assertThat(unit.cycleInputCurrent().si())
                .isPositive()
                .isLessThan(unit.ratedInputCurrent().si());
    }

    @Test
    void nothingHolds() {
        AxisDuty duty = size(indexing(ANY), unit("tiny", 0.1, 1), unit("near", 0.9, 5));
        assertThat(duty.feasible()).isFalse();
        assertThat(duty.driveUnit()).isEqualTo("near");
        assertThat(codes(indexing(ANY), unit("tiny", 0.1, 1))).contains(FindingCode.DUTY_NO_DRIVE_UNIT);
        assertThat(size(indexing(ANY)).driveUnit()).isNull();
        assertThat(codes(indexing(ANY))).contains(FindingCode.DUTY_CATALOGUE_EMPTY);
    }

    @Test
    void statedUnitIsJudged() {
        DriveUnit weak = unit("weak", "F", 0.5, 400, 60);
        DriveUnit slow = unit("slow", "F", 10, 4, 60);
        assertThat(codes(indexing(stated("weak", null, false)), weak))
                .contains(
                        FindingCode.DUTY_RMS_TORQUE_HIGH,
                        FindingCode.DUTY_PEAK_TORQUE_HIGH,
                        FindingCode.DUTY_WINDING_HOT,
                        FindingCode.DUTY_INERTIA_RATIO_HIGH)
                .doesNotContain(FindingCode.DUTY_NO_DRIVE_UNIT);
        assertThat(codes(indexing(stated("slow", null, false)), slow)).contains(FindingCode.DUTY_SPEED_HIGH);
        assertThat(codes(indexing(stated("slow", Feed.ONE_PHASE, false)), slow)).contains(FindingCode.DUTY_FEED_WRONG);
        assertThat(codes(lift(stated("slow", null, true), 20), slow)).contains(FindingCode.DUTY_BRAKE_WEAK);
    }

    /** A burst long against the winding's time constant overheats it though the rms torque is fair. */
    @Test
    void longBurstIsRejectedByTheWinding() {
        Axis burst = axis("burst", table(0.1, 5, 1), null, ANY, turn(200, 40, new Trapezoidal(0.1, 0.1)), dwell(900));
        AxisDuty duty = size(burst, unit("u", "F", 2.5, 400, 1e-4, 20, 10));
        assertThat(duty.candidates().getFirst().limit()).isEqualTo(DutyLimit.WINDING);
        assertThat(duty.limits().stream().filter(use -> DutyLimit.broken(use.use())))
                .extracting(LimitUse::limit)
                .containsExactly(DutyLimit.WINDING);
    }

    @Test
    void ventilationRaisesTheContinuousTorque() {
        Axis axis = indexing(new DriveWish().ventilated(true).made());
        DriveUnit unit = unit("u", "F", 0.8, 400, 10);
        DutyRequest request = new DutyRequest(
                SITE,
                MAINS,
                List.of(axis),
                List.of(),
                List.of(unit),
                List.of(),
                List.of(Fixtures.kit("fan", "F", 1.5, 5), Fixtures.kit("other", "G", 3, 1)),
                List.of());
        AxisDuty duty = new DutySizing().size(request).axes().getFirst();
        assertThat(duty.candidates()).hasSize(2);
        assertThat(duty.candidates().getFirst().ventilationKit()).isEqualTo("fan");
        double plain = size(axis, unit).limits().stream()
                .filter(use -> use.limit() == DutyLimit.CONTINUOUS)
                .findFirst()
                .orElseThrow()
                .use();
        AxisDuty cooled = new DutySizing().size(request).axes().getFirst();
        LimitUse use = cooled.limits().stream()
                .filter(u -> u.limit() == DutyLimit.CONTINUOUS)
                .findFirst()
                .orElseThrow();
        assertThat(use.use()).isCloseTo(plain / 1.5, within(1e-9));
    }

    @Test
    void verticalAxisNeedsABrake() {
        DriveUnit unit = unit("u", "F", 5, 400, 10);
        assertThat(codes(lift(ANY, 20), unit)).contains(FindingCode.DUTY_BRAKE_ABSENT, FindingCode.DUTY_LOAD_MAY_FALL);
        DutyResult result = withBrakes(BRAKED);
        assertThat(result.findings())
                .extracting(Finding::code)
                .contains(FindingCode.DUTY_LOAD_MAY_FALL)
                .doesNotContain(FindingCode.DUTY_BRAKE_ABSENT);
        // 20 kg · 9.80665 m/s² · 0.05 m / 10 = 0.980665 N·m, times 1.5 = 1.471 N·m
        assertThat(result.axes().getFirst().holdingBrake()).isEqualTo("cheap");
        assertThat(result.axes().getFirst().figures().holdingTorque().si()).isCloseTo(0.980665, within(1e-12));
    }

    private static DutyResult withBrakes(DriveSelection drive) {
        DutyRequest request = new DutyRequest(
                SITE,
                MAINS,
                List.of(lift(drive, 20)),
                List.of(),
                List.of(unit("u", "F", 5, 400, 10)),
                List.of(
                        Fixtures.brake("dear", "F", 9, 1e-5, 90),
                        Fixtures.brake("cheap", "F", 2, 1e-5, 40),
                        Fixtures.brake("weak", "F", 1.4, 1e-5, 10)),
                List.of(),
                List.of());
        return new DutySizing().size(request);
    }

    /** 0.980665 N·m times 1.4 is 1.373 N·m, times 2.1 is 2.06 N·m, times 9.5 is 9.32 N·m; the brakes have 1.4, 2 and 9. */
    @Test
    void marginOfTheBrakeIsTheOneStated() {
        assertThat(brakeWithMargin(1.4)).isEqualTo("weak");
        assertThat(brakeWithMargin(2.1)).isEqualTo("dear");
        DutyResult result = withBrakes(
                new DriveWish().item("u").braked(true).brakeMargin(9.5).made());
        assertThat(result.findings())
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_BRAKE_WEAK)
                .singleElement()
                .satisfies(finding -> assertThat(finding.clause()).contains("drive.brakeMargin"));
        assertThat(result.derivations())
                .filteredOn(derivation -> derivation.symbol().equals("T_brake"))
                .singleElement()
                .satisfies(derivation -> {
                    assertThat(derivation.inputs()).containsEntry("margin", new Ratio(9.5));
                    assertThat(derivation.result().si()).isCloseTo(9.5 * 0.980665, within(1e-12));
                });
    }

    private static @Nullable String brakeWithMargin(double margin) {
        DriveSelection drive = new DriveWish().braked(true).brakeMargin(margin).made();
        return withBrakes(drive).axes().getFirst().holdingBrake();
    }

    @Test
    void remarksOnMechanismCycleAndSite() {
        Screw screw = new Screw(
                new Length(0.004), new Length(0.02), new Length(0.5), new Mass(5), new Angle(0), 0.4, null, null);
        Dwell held = new Dwell(new Time(1), null, null, true);
        Axis axis = axis("screw", screw, null, ANY, travel(0.1, 1, new Triangular()), held);
        DutyRequest high = new DutyRequest(
                new Site(new Temperature(313.15), new Temperature(313.15), new Length(4500)),
                MAINS,
                List.of(axis),
                List.of(),
                List.of(unit("u", 5, 1)),
                List.of(),
                List.of(),
                List.of());
        assertThat(codes(high))
                .contains(
                        FindingCode.DUTY_ALTITUDE_HIGH,
                        FindingCode.DUTY_SELF_LOCKING,
                        FindingCode.DUTY_CYCLE_RUNS_OUT,
                        FindingCode.DUTY_DWELL_UNHELD)
                .doesNotContain(FindingCode.DUTY_CYCLE_DRIFTS);
        assertThat(codes(indexing(ANY), unit("u", 5, 1)))
                .doesNotContain(FindingCode.DUTY_CYCLE_DRIFTS, FindingCode.DUTY_CYCLE_RUNS_OUT);
    }

    /**
     * Ambient: x = (limit − ambient)/(limit − rated ambient), 50 °C at a 105 K rise gives 95/105, torque 0.951. Altitude: 2000,
     * 3000 and 4000 m give torque factors 0.949, 0.894, 0.837 (1 % of rise per 100 m above 1000 m, IEC 60034-1, from memory).
     */
    @ParameterizedTest
    @CsvSource({"50, 0, 0.951", "40, 2000, 0.949", "40, 3000, 0.894", "40, 4000, 0.837", "20, 500, 1"})
    void derating(double celsius, double altitude, double factor) {
        DriveUnit unit = Fixtures.withRise(unit("u", 5, 1), 105);
        Site site = new Site(new Temperature(celsius + 273.15), new Temperature(313.15), new Length(altitude));
        assertThat(Math.sqrt(Derating.permittedShare(unit, site))).isCloseTo(factor, within(5.1e-4));
    }

    @Test
    void lowLineLowersTheCurve() {
        AxisDuty duty = size(indexing(ANY), unit("u", "F", 10, 400, 1));
        LimitUse speed = duty.limits().stream()
                .filter(use -> use.limit() == DutyLimit.SPEED)
                .findFirst()
                .orElseThrow();
        assertThat(speed.allowed().si()).isCloseTo(360, within(1e-9));
    }

    @Test
    void stopsStartWhereTheyAreWorst() {
        AxisLoad load = AxisLoad.of(lift(ANY, 20));
        List<StopCourse> stops =
                Stops.of(load, LoadSums.of(load.pieces(), load.period()).peakSpeed(), load.addedInertia() + 1e-4, ZONE);
        assertThat(stops).hasSize(2);
        assertThat(size(lift(ANY, 20), unit("u", 5, 10)).stopModel()).isNull();
        double motorSpeed = 0.5 / 0.7 / 0.05 * 10;
        StopCourse falling = stops.get(1);
        assertThat(falling.instant()).isBetween(1.5, 2.5);
        assertThat(falling.course().duration()).isCloseTo(0.2, within(1e-12));
        Course.Piece first = falling.course().pieces().getFirst();
        assertThat(first.speed().at(0)).isCloseTo(-motorSpeed, within(1e-9));
        Course.Piece last = falling.course().pieces().getLast();
        assertThat(last.speed().at(last.duration())).isCloseTo(0, within(1e-9));
        // lowering and stopping: gravity and deceleration both drive, through hoist and gear
        double a = 0.5 / 0.7 / 0.2;
        double drum = 20 * (9.80665 + a) * 0.05 * (2 - 1 / 0.9) + 0.001 * a / 0.05;
        double torque = drum * (2 - 1 / 0.95) / 10 + 1e-4 * a / 0.05 * 10;
        assertThat(first.torque().at(0)).isCloseTo(torque, within(1e-9));
    }

    @Test
    void everyFaultIsNamedAtOnce() {
        Axis wrong = axis(
                "wrong",
                new Hoist(new Length(0.1), new io.axiswright.engine.quantity.Inertia(0), new Mass(1), null, 1, 1, null),
                null,
                stated("nowhere", null, false),
                turn(1, 1, new Trapezoidal(0.7, 0.7)),
                new Dwell(
                        new Time(1),
                        new io.axiswright.engine.quantity.Inertia(1),
                        new io.axiswright.engine.quantity.Torque(1),
                        false));
        assertThatThrownBy(() -> codes(wrong, unit("u", 1, 1)))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .extracting(Fault::pointer)
                                .containsExactly(
                                        "/design/axes/0/cycle/segments/0/distance",
                                        "/design/axes/0/cycle/segments/1/payload",
                                        "/design/axes/0/cycle/segments/1/processEffort",
                                        "/design/axes/0/cycle/segments/0/law/decelerationShare",
                                        "/design/axes/0/drive/item"));
    }

    @Test
    void permutedAxesPermuteTheAnswer() {
        RandomAxes random = new RandomAxes(81);
        List<Axis> axes = new ArrayList<>();
        for (int n = 0; n < 12; n++) {
            axes.add(Fixtures.inZone(random.next("axis " + n)));
        }
        List<DriveUnit> units = Arrays.asList(unit("a", 1, 10), unit("b", 4, 20), unit("c", 16, 40), unit("d", 64, 80));
        List<AxisDuty> straight =
                new DutySizing().size(Fixtures.request(axes, units)).axes();
        Collections.reverse(axes);
        List<AxisDuty> reversed =
                new DutySizing().size(Fixtures.request(axes, units)).axes();
        assertThat(reversed.reversed()).usingRecursiveComparison().isEqualTo(straight);
        assertThat(straight).allMatch(duty -> ZONE.id().equals("zone") && duty.stopModel() != null);
    }

    @Test
    void heavierLoadsNeverAskForLess() {
        for (double mass = 1; mass < 500; mass *= 2) {
            double one = size(lift(ANY, mass), unit("u", "F", 5, 400, 1e-4, 60, 1))
                    .figures()
                    .peakTorque()
                    .si();
            double two = size(lift(ANY, 2 * mass), unit("u", "F", 5, 400, 1e-4, 60, 1))
                    .figures()
                    .peakTorque()
                    .si();
            assertThat(two).isGreaterThanOrEqualTo(one);
        }
    }

    @Test
    void restNeverRaisesTheRms() {
        RandomAxes random = new RandomAxes(91);
        for (int n = 0; n < 40; n++) {
            Axis axis = random.next("seed 91 axis " + n);
            List<io.axiswright.engine.design.Segment> longer =
                    new ArrayList<>(axis.cycle().segments());
            longer.add(new Dwell(new Time(0.5), null, null, true));
            DriveSelection braked = new DriveWish().braked(true).made();
            Axis plain = Fixtures.geared(
                    axis.id(),
                    axis.mechanism(),
                    axis.gears(),
                    braked,
                    axis.cycle().segments().toArray(io.axiswright.engine.design.Segment[]::new));
            Axis rested = Fixtures.geared(
                    axis.id(),
                    axis.mechanism(),
                    axis.gears(),
                    braked,
                    longer.toArray(io.axiswright.engine.design.Segment[]::new));
            assertThat(rms(rested)).as(axis.id()).isLessThanOrEqualTo(rms(plain));
        }
    }

    private static double rms(Axis axis) {
        AxisLoad load = AxisLoad.of(axis);
        return LoadSums.of(load.pieces(), load.period()).rmsTorque(1e-4);
    }
}
