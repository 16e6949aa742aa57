package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Cycle;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.EndFixity;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.ScrewSupport;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The most an axis can do: by hand, and by sizing the axis at the answer and just beyond it. */
class ReserveSearchTest {

    private static final DriveSelection ASKING = new DriveWish().reserves().made();

    private static final DriveSelection BRAKED =
            new DriveWish().braked(true).reserves().made();

    private static final double GRAVITY = 9.80665;

    private static final double ROTOR = 2e-4;

    private static DriveUnit unit(double torque, double topSpeed) {
        return Fixtures.unit("unit", "F1", torque, topSpeed, ROTOR, 60, 100);
    }

    private static Axis spinning(double inertia, Segment... segments) {
        return Fixtures.axis("a", new DirectDrive(new Inertia(inertia), null, null, null), null, ASKING, segments);
    }

    private static Reserves reserves(Axis axis, DriveUnit unit, HoldingBrake... brakes) {
        return Objects.requireNonNull(duty(axis, unit, brakes).reserves());
    }

    private static AxisDuty duty(Axis axis, DriveUnit unit, HoldingBrake... brakes) {
        return size(axis, unit, brakes).axes().getFirst();
    }

    private static DutyResult size(Axis axis, DriveUnit unit, HoldingBrake... brakes) {
        return new DutySizing()
                .size(new DutyRequest(
                        Fixtures.SITE,
                        Fixtures.MAINS,
                        List.of(axis),
                        List.of(Fixtures.ZONE),
                        List.of(unit),
                        List.of(brakes),
                        List.of(),
                        List.of()));
    }

    private static double factor(TimeReserve reserve) {
        return Objects.requireNonNull(reserve.timeFactor());
    }

    private static Offset<Double> millionth(double value) {
        return within(1e-6 * Math.abs(value));
    }

    @Test
    void unlessAskedForThereAreNone() {
        Axis axis = Fixtures.axis(
                "a",
                new DirectDrive(new Inertia(0.01), null, null, null),
                null,
                Fixtures.ANY,
                Fixtures.turn(1, 0.5, new Triangular()));
        assertThat(duty(axis, unit(2, 4000)).reserves()).isNull();
    }

    @Test
    void peakTorqueOfATriangleGivesTheShortestMove() {
        TimeReserve reserve = reserves(
                        spinning(0.01, Fixtures.turn(1, 0.5, new Triangular()), Fixtures.dwell(10)), unit(2, 4000))
                .moveTime();
        double shortest = Math.sqrt(4 * (0.01 + ROTOR) / 6); // T = J·4·angle/t², three times 2 N·m at the peak
        assertThat(Objects.requireNonNull(reserve.movingTime()).si()).isCloseTo(shortest, millionth(shortest));
        assertThat(Objects.requireNonNull(reserve.cyclePeriod()).si()).isCloseTo(10 + shortest, millionth(10));
        assertThat(factor(reserve)).isCloseTo(shortest / 0.5, millionth(shortest / 0.5));
        assertThat(reserve.limit()).isEqualTo(DutyLimit.INTERMITTENT);
        assertThat(reserve.verdict()).isEqualTo(ReserveVerdict.BOUND);
    }

    /** T = J·4·angle/t² = 16·J: the unit's three times its torque is what a two-hundredth more than the stated inertia takes. */
    @Test
    void aPayloadThatHardlyAddsIsFoundToo() {
        double added = 0.01 / 200;
        DriveUnit unit = unit(16 * (0.01 + ROTOR + added) / 3, 4000);
        PayloadReserve reserve = reserves(
                        spinning(0.01, Fixtures.turn(1, 0.5, new Triangular()), Fixtures.dwell(10)), unit)
                .payload();
        assertThat(Objects.requireNonNull(reserve.added()).si()).isCloseTo(added, within(1e-6 * 0.01));
        assertThat(reserve.limit()).isEqualTo(DutyLimit.INTERMITTENT);
    }

    /** The same triangle: t = sqrt(4·J/T) = 82.5 ms of the stated 0.5 s, with 10 s of rest each. */
    @Test
    void reservesAreDerived() {
        Axis axis = spinning(0.01, Fixtures.turn(1, 0.5, new Triangular()), Fixtures.dwell(10));
        double shortest = Math.sqrt(4 * (0.01 + ROTOR) / 6);
        assertThat(size(axis, unit(2, 4000)).derivations())
                .filteredOn(derivation -> derivation.symbol().equals("k_move"))
                .singleElement()
                .satisfies(derivation -> {
                    assertThat(derivation.formula()).contains("intermittent limit breaks beyond");
                    assertThat(derivation.result().si()).isCloseTo(shortest / 0.5, millionth(shortest / 0.5));
                    assertThat(derivation.inputs().get("t_cycle")).isEqualTo(new Time(10.5));
                });
        assertThat(size(axis, unit(2, 4000)).derivations())
                .extracting(Derivation::symbol)
                .contains("k_cycle", "p_add");
    }

    /** A triangle is two pieces, a dwell is one; 1333 of each are 3999 pieces, one dwell more 4000, two more 4001. */
    @Test
    void reservesOfVeryLongCyclesAreNotSearched() {
        assertThat(ReserveSearch.pieces(List.of(longCycle(4000)))).isEqualTo(4000);
        DutyResult result = size(longCycle(4001), unit(2, 4000));
        assertThat(result.axes().getFirst().reserves()).isNull();
        assertThat(result.findings())
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_RESERVES_UNSEARCHED)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.pointer()).isEqualTo("/design/axes");
                    assertThat(finding.value()).isEqualTo(new Ratio(4001));
                    assertThat(finding.limit()).isEqualTo(new Ratio(4000));
                });
    }

    private static Axis longCycle(int pieces) {
        List<Segment> segments = new ArrayList<>();
        for (int k = 0; k < pieces / 3; k++) {
            segments.add(Fixtures.turn(1e-3, 0.5, new Triangular()));
            segments.add(Fixtures.dwell(1));
        }
        while (segments.size() < pieces / 3 * 2 + pieces % 3) {
            segments.add(Fixtures.dwell(1));
        }
        return spinning(1e-5, segments.toArray(Segment[]::new));
    }

    @Test
    void topSpeedGivesTheFastestCycle() {
        TimeReserve reserve = reserves(
                        spinning(1e-5, Fixtures.turn(1, 1, new Triangular()), Fixtures.dwell(0.5)), unit(2, 30))
                .cycleRate();
        double fastest = 2 / 27.0; // peak speed 2·angle/t against 30 rad/s at nine tenths of the voltage
        assertThat(factor(reserve)).isCloseTo(fastest, millionth(fastest));
        assertThat(Objects.requireNonNull(reserve.cycleRate()).si())
                .isCloseTo(1 / (1.5 * fastest), millionth(1 / fastest));
        assertThat(reserve.limit()).isEqualTo(DutyLimit.SPEED);
    }

    /**
     * A screw of 1 m with a root of 16.5 mm, fixed and supported: 18.856e7·16.5/1e6 = 3111.2 1/min, 0.8 of it 2489.0 1/min. 0.8 m by
     * a triangle of time t peak at 1.6/t m/s, on a lead of 10 mm 9600/t 1/min: t is no less than 3.8570 s, however strong the motor.
     */
    @Test
    void whirlingGivesTheFastestCycleOfAScrew() {
        ScrewSupport support = new ScrewSupport(EndFixity.FIXED_SUPPORTED, new Length(0.0165), null, null, null, null);
        Screw screw = Fixtures.screw(1, 1, 0, support, null);
        Axis axis = Fixtures.axis(
                "a",
                screw,
                null,
                ASKING,
                Fixtures.travel(0.8, 10, new Triangular()),
                Fixtures.travel(-0.8, 10, new Triangular()));
        TimeReserve reserve = reserves(axis, unit(50, 4000)).cycleRate();
        assertThat(reserve.limit()).isEqualTo(DutyLimit.MECHANISM);
        assertThat(factor(reserve)).isCloseTo(0.38570, within(1e-4));
        assertThat(duty(axis, unit(50, 4000)).limits())
                .extracting(LimitUse::limit)
                .doesNotContain(DutyLimit.MECHANISM);
    }

    @Test
    void heatGivesTheFastestCycleOfATorqueThatNeverRests() {
        TimeReserve reserve = reserves(spinning(0.01, Fixtures.turn(1, 0.5, new Triangular())), unit(2, 4000))
                .cycleRate();
        double time = 0.5 * factor(reserve);
        double rmsSpeed = 2 / time / Math.sqrt(3);
        double continuous = 2 * (1 - 0.2 * rmsSpeed / 4000);
        assertThat((0.01 + ROTOR) * 4 / (time * time)).isCloseTo(continuous, within(4e-6));
        assertThat(reserve.limit()).isIn(DutyLimit.CONTINUOUS, DutyLimit.WINDING);
    }

    @Test
    void whatCannotBeMetAsAskedIsSlowedDown() {
        TimeReserve reserve = reserves(
                        spinning(0.01, Fixtures.turn(1, 0.02, new Triangular()), Fixtures.dwell(10)), unit(2, 4000))
                .moveTime();
        double shortest = Math.sqrt(4 * (0.01 + ROTOR) / 6);
        assertThat(factor(reserve)).isCloseTo(shortest / 0.02, millionth(shortest / 0.02));
    }

    private static Axis hoist(double load, DriveSelection drive, @Nullable Payload payload) {
        return Fixtures.axis(
                "lift",
                Fixtures.hoist(0.1, 0, load, 0, 1),
                null,
                drive,
                carrying(Fixtures.travel(0.5, 2, new Trapezoidal(0.3, 0.3)), payload),
                carrying(Fixtures.travel(-0.5, 2, new Trapezoidal(0.3, 0.3)), payload));
    }

    private static Move carrying(Move move, @Nullable Payload payload) {
        return new Move(
                Objects.requireNonNull(move.distance()),
                Objects.requireNonNull(move.duration()),
                move.law(),
                payload,
                move.processEffort());
    }

    @Test
    void theBrakeGivesTheLargestPayload() {
        HoldingBrake brake = Fixtures.brake("brake", "F1", 15, 1e-4, 10);
        PayloadReserve reserve =
                reserves(hoist(5, BRAKED, null), unit(40, 400), brake).payload();
        double largest = 15 / 1.5 / (GRAVITY * 0.05) - 5; // 1.5·(m + load)·g·r against 15 N·m
        assertThat(Objects.requireNonNull(reserve.added()).si()).isCloseTo(largest, millionth(largest));
        assertThat(reserve.added()).isInstanceOf(Mass.class);
        assertThat(reserve.limit()).isEqualTo(DutyLimit.BRAKE);
    }

    @Test
    void aPayloadTooLargeIsLessened() {
        HoldingBrake brake = Fixtures.brake("brake", "F1", 15, 1e-4, 10);
        PayloadReserve reserve =
                reserves(hoist(5, BRAKED, new Mass(50)), unit(40, 400), brake).payload();
        double largest = 15 / 1.5 / (GRAVITY * 0.05) - 5;
        assertThat(Objects.requireNonNull(reserve.largest()).si()).isCloseTo(largest, millionth(largest));
        assertThat(Objects.requireNonNull(reserve.added()).si()).isCloseTo(largest - 50, millionth(largest));
    }

    @Test
    void onlyLoadedSegmentsCarryMore() {
        Axis axis = spinning(
                0.01,
                carrying(Fixtures.turn(1, 0.5, new Triangular()), new Inertia(0.001)),
                Fixtures.dwell(20),
                Fixtures.turn(-1, 0.09, new Triangular()),
                Fixtures.dwell(20));
        PayloadReserve reserve = reserves(axis, unit(2, 4000)).payload();
        double largest = 6 * 0.25 / 4 - 0.01 - ROTOR; // the empty way back alone would leave 0.002 kg·m²
        assertThat(Objects.requireNonNull(reserve.largest()).si()).isCloseTo(largest, millionth(largest));
        assertThat(reserve.limit()).isEqualTo(DutyLimit.INTERMITTENT);
    }

    @Test
    void aLoadTooHeavyToHoldNeverHolds() {
        Reserves reserves = reserves(hoist(500, ASKING, null), unit(2, 400));
        assertThat(reserves.cycleRate()).isEqualTo(TimeReserve.without(ReserveVerdict.NEVER_HOLDS));
        assertThat(reserves.payload()).isEqualTo(PayloadReserve.without(ReserveVerdict.NEVER_HOLDS));
    }

    @Test
    void aThousandfoldIsAsFarAsIsSearched() {
        Reserves reserves = reserves(spinning(1e-5, Fixtures.turn(1e-6, 10, new Triangular())), unit(2, 400));
        assertThat(reserves.cycleRate().verdict()).isEqualTo(ReserveVerdict.UNBOUND);
        assertThat(reserves.moveTime().verdict()).isEqualTo(ReserveVerdict.UNBOUND);
    }

    @Test
    void statedTorqueAndStandstillHaveNoRate() {
        TorqueCourse stated = new TorqueCourse(List.of(point(0, 0), point(1, 0)), TorquePlace.MOTOR_SHAFT, null);
        for (Segment segment : List.of(stated, Fixtures.dwell(1))) {
            Reserves reserves = reserves(spinning(0.01, segment), unit(2, 400));
            assertThat(reserves.cycleRate().verdict()).isEqualTo(ReserveVerdict.NOT_APPLICABLE);
            assertThat(reserves.moveTime().verdict()).isEqualTo(ReserveVerdict.NOT_APPLICABLE);
        }
        assertThat(reserves(spinning(0.01, stated), unit(2, 400)).payload().verdict())
                .isEqualTo(ReserveVerdict.NOT_APPLICABLE);
    }

    private static TorquePoint point(double time, double speed) {
        return new TorquePoint(new Time(time), new AngularSpeed(speed), new Torque(1));
    }

    /** The axis sized anew with its durations typed in: nothing of the search takes part. */
    private static Axis retimed(Axis axis, double factor, boolean standstills) {
        return with(
                axis,
                axis.cycle().segments().stream()
                        .map(segment -> switch (segment) {
                            case Move move ->
                                new Move(
                                        Objects.requireNonNull(move.distance()),
                                        new Time(Objects.requireNonNull(move.duration())
                                                        .si()
                                                * factor),
                                        move.law(),
                                        move.payload(),
                                        move.processEffort());
                            case Dwell dwell
                            when standstills ->
                                new Dwell(
                                        new Time(dwell.duration().si() * factor),
                                        dwell.payload(),
                                        dwell.processEffort(),
                                        dwell.brakeHolds());
                            default -> segment;
                        })
                        .toList());
    }

    private static Axis with(Axis axis, List<Segment> segments) {
        return new Axis(
                axis.id(),
                axis.description(),
                axis.mechanism(),
                axis.gears(),
                axis.couplingInertia(),
                new Cycle(segments),
                axis.position(),
                axis.stopZone(),
                axis.busGroup(),
                axis.commandRate(),
                axis.drive(),
                axis.mounting());
    }

    private static List<DutyLimit> broken(Axis axis, DriveUnit unit) {
        return duty(axis, unit).limits().stream()
                .filter(LimitUse::broken)
                .map(LimitUse::limit)
                .toList();
    }

    private static Axis random(SplittableRandom random) {
        double distance = 0.1 + random.nextDouble();
        return Fixtures.axis(
                "lift",
                Fixtures.hoist(0.1, 0.002, 1 + 9 * random.nextDouble(), 5 * random.nextDouble(), 0.9),
                Fixtures.gear(1 + 4 * random.nextDouble(), 0.95),
                ASKING,
                Fixtures.travel(distance, 0.3 + random.nextDouble(), new Trapezoidal(0.3, 0.2)),
                Fixtures.dwell(random.nextDouble()),
                Fixtures.travel(-distance, 0.3 + random.nextDouble(), new Triangular()));
    }

    @Test
    void atTheAnswerAllHoldsAndBeyondItTheNamedLimitBreaks() {
        int bound = 0;
        for (long seed = 0; seed < 40; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Axis axis = random(random);
            DriveUnit unit = unit(1 + 8 * random.nextDouble(), 100 + 400 * random.nextDouble());
            Reserves reserves = reserves(axis, unit);
            for (boolean standstills : new boolean[] {true, false}) {
                TimeReserve reserve = standstills ? reserves.cycleRate() : reserves.moveTime();
                if (reserve.verdict() != ReserveVerdict.BOUND) {
                    continue;
                }
                bound++;
                double factor = factor(reserve);
                assertThat(broken(retimed(axis, factor * (1 + 1e-8), standstills), unit))
                        .as("seed %d, standstills %s", seed, standstills)
                        .isEmpty();
                assertThat(broken(retimed(axis, factor * (1 - 1e-5), standstills), unit))
                        .as("seed %d, standstills %s", seed, standstills)
                        .contains(Objects.requireNonNull(reserve.limit()));
            }
        }
        assertThat(bound).isGreaterThan(50);
    }

    private static DriveUnit stronger(DriveUnit small, double share) {
        DriveUnit strong = Fixtures.unit("unit", "F1", 1, 1, ROTOR, 60, 100);
        return new DriveUnit(
                strong.id(),
                strong.description(),
                strong.price(),
                strong.needs(),
                strong.frameSize(),
                strong.feed(),
                strong.ratedVoltage(),
                strong.ratedInputCurrent(),
                strong.maxProtectiveDevice(),
                strong.maxUnitsPerCircuit(),
                strong.shortCircuitRating(),
                strong.leakageCurrent(),
                strong.rotorInertia(),
                strong.motorConstant(),
                stronger(small.continuousCurve(), share),
                stronger(small.intermittentCurve(), share),
                strong.ratedAmbient(),
                strong.ratedRise(),
                strong.windingTimeConstant(),
                strong.standbyLoss(),
                strong.busCapacitance(),
                strong.busTripVoltage(),
                strong.logicPower(),
                strong.logicMinimumVoltage(),
                strong.keepAliveInput(),
                strong.shaftDiameter(),
                strong.shaftLength(),
                strong.inertiaRatioLimit());
    }

    private static List<CurvePoint> stronger(List<CurvePoint> curve, double share) {
        return curve.stream()
                .map(point -> new CurvePoint(
                        point.speed(), new Torque(share * point.torque().si())))
                .toList();
    }

    @Test
    void aStrongerUnitIsNeverSlower() {
        int compared = 0;
        for (long seed = 100; seed < 125; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Axis axis = random(random);
            DriveUnit small = unit(2 + 8 * random.nextDouble(), 100 + 400 * random.nextDouble());
            Reserves less = reserves(axis, small);
            Reserves more = reserves(axis, stronger(small, 1 + random.nextDouble()));
            if (less.cycleRate().verdict() != ReserveVerdict.BOUND
                    || more.cycleRate().verdict() != ReserveVerdict.BOUND) {
                continue;
            }
            compared++;
            assertThat(factor(more.cycleRate()))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(factor(less.cycleRate()) * (1 + 1e-6));
            if (less.payload().verdict() == ReserveVerdict.BOUND
                    && more.payload().verdict() == ReserveVerdict.BOUND) {
                assertThat(Objects.requireNonNull(more.payload().added()).si())
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(
                                Objects.requireNonNull(less.payload().added()).si() - 1e-5);
            }
        }
        assertThat(compared).isGreaterThan(15);
    }
}
