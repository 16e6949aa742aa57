package io.axiswright.engine.stopping;

import static io.axiswright.engine.stopping.StoppingFixtures.axis;
import static io.axiswright.engine.stopping.StoppingFixtures.brake;
import static io.axiswright.engine.stopping.StoppingFixtures.load;
import static io.axiswright.engine.stopping.StoppingFixtures.piece;
import static io.axiswright.engine.stopping.StoppingFixtures.safeguard;
import static io.axiswright.engine.stopping.StoppingFixtures.shuttle;
import static io.axiswright.engine.stopping.StoppingFixtures.study;
import static io.axiswright.engine.stopping.StoppingFixtures.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.LightCurtain;
import io.axiswright.engine.design.SafeguardStandard;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.duty.CoastLoad;
import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.duty.DutyLimit;
import io.axiswright.engine.duty.LimitUse;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Stops of whole axes and zones. */
class StoppingStudyTest {

    private static double si(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static List<FindingCode> codes(StoppingResult result) {
        return result.findings().stream().map(f -> f.code()).toList();
    }

    /**
     * A vertical axis by hand: all inertia 0.004 kg·m² on the motor shaft, its weight 2 N·m there, 10 mm of load a radian, running
     * down at 100 rad/s. Brake 6 N·m after 50 ms. Coasting: a = 2/0.004 = 500 rad/s², to 125 rad/s over 5 + 0.625 = 5.625 rad.
     * Braking: (6 − 2)/0.004 = 1000 rad/s², 0.125 s, 7.8125 rad. Together 0.175 s and 13.4375 rad = 134.375 mm. Energy of the
     * brake 6·7.8125 = 46.875 J = ½·0.004·100² + 2·13.4375 J.
     */
    @Test
    void aVerticalAxisByHand() {
        Coasting down = shuttle(load(0.004, 2, 0, 0), -100, 0.2, 0.6, 1, true);
        StoppingResult result = study(zone(StopCategory.CATEGORY_1, 0.03, 0.4), axis(down, brake(6, 0.05, null, null)));
        AxisStopping loss = result.powerLosses().getFirst();
        assertThat(si(loss.stoppingTime())).isCloseTo(0.175, within(1e-12));
        assertThat(si(loss.distance())).isCloseTo(0.134375, within(1e-9));
        assertThat(si(loss.provenDistance())).isBetween(0.134375 * (1 - 1e-12), 0.134375 * (1 + 1.1e-4));
        assertThat(si(loss.fall())).isCloseTo(0.134375, within(1e-12));
        assertThat(si(loss.brakeEnergy())).isCloseTo(46.875, within(1e-9));
        // category 1: 30 ms at 100 rad/s, then half of it over 0.4 s: 3 + 20 rad
        AxisStopping stop = result.zones().getFirst().axes().getFirst();
        assertThat(si(stop.stoppingTime())).isCloseTo(0.43, within(1e-12));
        assertThat(si(stop.distance())).isCloseTo(0.23, within(1e-9));
        assertThat(codes(result))
                .containsExactly(FindingCode.STOPPING_LOAD_FALLS, FindingCode.STOPPING_BRAKE_UNCHECKED);
        assertThat(result.findings().getFirst().text()).contains("0.1344 m", "0.175 s");
    }

    /** The same running up at 100 rad/s: 500 rad/s² against it, so 75 rad/s and 4.375 rad after 50 ms, then 2000 rad/s². */
    @Test
    void aRisingLoadStopsSoonerButFallsFromRest() {
        Coasting up = shuttle(load(0.004, 2, 0, 0), 100, 0.2, 0.6, 1, true);
        StoppingResult result = study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(up, brake(6, 0.05, null, null)));
        AxisStopping loss = result.powerLosses().getFirst();
        assertThat(si(loss.distance())).isCloseTo((4.375 + 75.0 * 75 / 2 / 2000) * 0.01, within(1e-9));
        // from standstill: 25 rad/s after 50 ms, 0.625 rad, then 1000 rad/s²: 25 ms and 0.3125 rad
        assertThat(si(loss.fall())).isCloseTo(0.9375 * 0.01, within(1e-12));
        assertThat(si(loss.stoppingTime())).isCloseTo(0.05 + 75.0 / 2000, within(1e-12));
        assertThat(codes(result))
                .containsExactly(
                        FindingCode.STOPPING_LOAD_FALLS,
                        FindingCode.STOPPING_BRAKE_UNCHECKED,
                        FindingCode.STOPPING_WITHOUT_TORQUE);
    }

    /** A brake that has worn to 2/3 of its torque, and cannot take the energy: 4 N·m leave 500 rad/s², 15.625 rad. */
    @Test
    void aWornBrakeTakesLongerAndMoreEnergy() {
        Coasting down = shuttle(load(0.004, 2, 0, 0), -100, 0.2, 0.6, 1, true);
        StoppingResult result =
                study(zone(StopCategory.CATEGORY_1, 0.03, 0.4), axis(down, brake(6, 0.05, 2.0 / 3, 60.0)));
        assertThat(si(result.powerLosses().getFirst().stoppingTime())).isCloseTo(0.3, within(1e-12));
        assertThat(si(result.powerLosses().getFirst().brakeEnergy())).isCloseTo(62.5, within(1e-9));
        assertThat(codes(result))
                .containsExactly(FindingCode.STOPPING_LOAD_FALLS, FindingCode.STOPPING_BRAKE_ENERGY_HIGH);
    }

    @Test
    void whatNeverRestsIsSaid() {
        Coasting down = shuttle(load(0.004, 2, 0, 0), -100, 0.2, 0.6, 1, true);
        StoppingResult unheld = study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(down, null));
        assertThat(unheld.zones().getFirst().stoppingTime()).isNull();
        assertThat(unheld.powerLosses().getFirst().distance()).isNull();
        assertThat(codes(unheld)).containsExactly(FindingCode.STOPPING_LOAD_UNHELD);
        assertThat(codes(study(zone(StopCategory.CATEGORY_1, 0, 0.4), axis(down, brake(2, 0.05, null, null)))))
                .containsExactly(FindingCode.STOPPING_BRAKE_WEAK);
        Coasting level = shuttle(load(0.004, 0, 0, 0), 100, 0.2, 0.6, 1, false);
        assertThat(codes(study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(level, null))))
                .containsExactly(FindingCode.STOPPING_NEVER_RESTS);
        assertThat(codes(study(zone(StopCategory.CATEGORY_1, 0, 0.4), axis(level, null))))
                .isEmpty();
    }

    /** Friction of 1 N·m: 250 rad/s², 0.4 s and 20 rad; 0.1 s of reaction before add 10 rad. */
    @Test
    void frictionAloneStopsALevelAxis() {
        Coasting level = shuttle(load(0.004, 0, 1, 0), 100, 0.2, 0.6, 1, false);
        StoppingResult result = study(zone(StopCategory.CATEGORY_0, 0.1, 0.4), axis(level, null));
        AxisStopping stop = result.zones().getFirst().axes().getFirst();
        assertThat(si(stop.stoppingTime())).isCloseTo(0.5, within(1e-12));
        assertThat(si(stop.distance())).isCloseTo(0.3, within(1e-9));
        assertThat(stop.fall()).isNull();
        assertThat(stop.brakeEnergy()).isNull();
        assertThat(codes(result)).containsExactly(FindingCode.STOPPING_BY_FRICTION);
    }

    /** The effort of a process may go on or let go: whichever is worse counts. */
    @Test
    void theProcessMayLetGo() {
        CoastLoad opposed = load(0.004, 3, 1, 0);
        CoastLoad bare = load(0.004, 0, 1, 0);
        List<Coasting.Piece> pieces = List.of(piece(0, 1, Polynomial.of(0, 100), opposed, bare));
        var coasting = new Coasting(true, 0.5, false, true, pieces);
        AxisStopping stop = study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(coasting, brake(6, 10, null, null)))
                .powerLosses()
                .getFirst();
        assertThat(stop.distance()).isInstanceOf(Angle.class);
        // opposed it turns round and is driven back for 10 s: 500 rad/s² on balance
        assertThat(si(stop.distance())).isGreaterThan(1000);
        var held = new Coasting(
                true,
                0.5,
                false,
                true,
                List.of(new Coasting.Piece(0, 1, Polynomial.ZERO, true, List.of(load(0.004, 3, 0, 0)))));
        assertThat(si(study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(held, null))
                        .powerLosses()
                        .getFirst()
                        .stoppingTime()))
                .isZero();
    }

    /** Against 4000 sampled instants each, the run-on by summing small steps: none is worse than the proven bound. */
    @Test
    void noInstantIsWorseThanTheBound() {
        for (long seed = 1; seed <= 12; seed++) {
            var random = new SplittableRandom(seed);
            List<Coasting.Piece> pieces = new ArrayList<>();
            double start = 0;
            for (int k = 0; k < 4; k++) {
                double length = random.nextDouble(0.1, 0.5);
                double top = random.nextDouble(-200, 200);
                CoastLoad load =
                        load(0.004, random.nextDouble(-3, 3), random.nextDouble(0, 1), random.nextDouble(0, 0.02));
                // up and down along a parabola
                pieces.add(piece(start, length, Polynomial.of(0, 4 * top / length, -4 * top / length / length), load));
                start += length;
            }
            var coasting = new Coasting(false, 1, true, true, pieces);
            var stopping = axis(coasting, brake(6, 0.06, null, null));
            double reaction = random.nextDouble(0, 0.2);
            AxisStopping stop = study(zone(StopCategory.CATEGORY_0, reaction, 1), stopping)
                    .zones()
                    .getFirst()
                    .axes()
                    .getFirst();
            double worst = 0;
            double longest = 0;
            for (int k = 0; k < 4000; k++) {
                double instant = start * k / 4000;
                Coasting.Piece piece = at(coasting, instant);
                CoastRun run =
                        CoastRun.of(piece.bare(), piece.speed().at(instant - piece.start()), new BrakeAction(0.06, 6));
                double runOn = 0;
                int steps = 200;
                for (int n = 0; n < steps; n++) {
                    double then = instant - reaction * (n + 0.5) / steps;
                    double wrapped = then - Math.floor(then / start) * start;
                    Coasting.Piece before = at(coasting, wrapped);
                    runOn += Math.abs(before.speed().at(wrapped - before.start())) * reaction / steps;
                }
                worst = Math.max(worst, runOn + run.path());
                longest = Math.max(longest, reaction + run.time());
            }
            assertThat(si(stop.provenDistance())).as("seed %d", seed).isBetween(worst * (1 - 1e-4), worst * 1.01);
            assertThat(si(stop.provenDistance()))
                    .as("seed %d", seed)
                    .isCloseTo(si(stop.distance()), within(1.1e-4 * worst));
            assertThat(si(stop.stoppingTime())).as("seed %d", seed).isBetween(longest * (1 - 1e-12), longest * 1.01);
        }
    }

    private static Coasting.Piece at(Coasting coasting, double instant) {
        return coasting.pieces().stream()
                .filter(p -> instant >= p.start() && instant < p.end())
                .findFirst()
                .orElse(coasting.pieces().getLast());
    }

    @Test
    void theSlowestAxisIsTheZones() {
        Coasting level = shuttle(load(0.004, 0, 1, 0), 100, 0.2, 0.6, 1, false);
        Coasting heavy = shuttle(load(0.008, 0, 1, 0), 100, 0.2, 0.6, 1, false);
        StoppingResult result = study(
                zone(StopCategory.CATEGORY_0, 0.1, 0.4),
                axis(level, null),
                new StoppingAxis(1, "y", "zone", heavy, null, null, null),
                new StoppingAxis(2, "x", null, heavy, null, null, null));
        assertThat(result.zones().getFirst().axes()).hasSize(2);
        assertThat(result.powerLosses()).hasSize(3);
        assertThat(si(result.zones().getFirst().stoppingTime())).isCloseTo(0.9, within(1e-12));
        assertThat(zone(StopCategory.CATEGORY_2, 0.1, 0.4).plannedStop()).isEqualTo(new Time(0.5));
    }

    @Test
    void anUnevenLoadIsAnEstimate() {
        CoastLoad pulled = load(0.004, -2, 0, 0);
        CoastLoad held = load(0.004, 2, 0, 0);
        var coasting = new Coasting(true, 1, true, false, List.of(piece(0, 1, Polynomial.of(100), pulled, held)));
        StoppingResult result =
                study(zone(StopCategory.CATEGORY_1, 0, 0.4), axis(coasting, brake(6, 0.05, null, null)));
        // the same as the vertical axis by hand, whichever way the load pulls
        assertThat(si(result.powerLosses().getFirst().fall())).isCloseTo(13.4375, within(1e-9));
        assertThat(codes(result))
                .containsExactly(
                        FindingCode.STOPPING_LOAD_FALLS,
                        FindingCode.STOPPING_BRAKE_UNCHECKED,
                        FindingCode.STOPPING_LOAD_UNEVEN);
    }

    /** A link that locks at rest by a stated 0 and passes more than half when driven: at a constant speed nothing brakes it. */
    @Test
    void aLockThatFrictionDoesNotBearOutIsToldAsSuch() {
        var load = new CoastLoad(0, 2, 0, 0, List.of(new CoastLoad.Link(1, 0.7, 0, 0, 0)), 0.004);
        StoppingResult result =
                study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(shuttle(load, -100, 0.2, 0.6, 1, true), null));
        assertThat(result.zones().getFirst().stoppingTime()).isNull();
        assertThat(codes(result)).containsExactly(FindingCode.STOPPING_LOCK_UNSURE);
    }

    /**
     * A self-locking thread by hand: 0.004 kg·m² at the motor, a weight of 2 N·m behind a link of back-driving efficiency −0.5 on the
     * same shaft. Going down the thread's friction leaves 0.5·2 = 1 N·m against the motion: from 100 rad/s a = 250 rad/s², 0.4 s and
     * 20 rad, and there it stays.
     */
    @Test
    void aSelfLockingThreadStopsByItself() {
        var load = new CoastLoad(0, 2, 0, 0, List.of(new CoastLoad.Link(1, 0.4, -0.5, 0, 0)), 0.004);
        StoppingResult result =
                study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(shuttle(load, -100, 0.2, 0.6, 1, true), null));
        AxisStopping loss = result.powerLosses().getFirst();
        assertThat(si(loss.stoppingTime())).isCloseTo(0.4, within(1e-12));
        assertThat(si(loss.fall())).isCloseTo(0.2, within(1e-9));
        assertThat(codes(result)).containsExactly(FindingCode.STOPPING_LOAD_FALLS, FindingCode.STOPPING_BY_FRICTION);
    }

    /**
     * With 1 kg·m² behind that thread its friction would have to hold back 0.5·1 kg·m² with the 0.004 of the motor: a jam, which is not
     * counted on. Lossless backwards nothing comes through, and without friction of its own the motor turns on for ever.
     */
    @Test
    void aJamIsNotCountedOn() {
        var load = new CoastLoad(1, 2, 0, 0, List.of(new CoastLoad.Link(1, 0.4, -0.5, 0, 0)), 0.004);
        StoppingResult result =
                study(zone(StopCategory.CATEGORY_0, 0, 0.4), axis(shuttle(load, -100, 0.2, 0.6, 1, true), null));
        assertThat(result.powerLosses().getFirst().stoppingTime()).isNull();
    }

    /** 250 N·m where the drive unit has 30: nobody knows when it rests, so neither time nor distance is stated. */
    @Test
    void aStopTheDriveUnitCannotMakeHasNoTime() {
        var hardest = new LimitUse(DutyLimit.INTERMITTENT, new Torque(250), new Torque(30), 250.0 / 30, new Time(0.2));
        Coasting coasting = shuttle(load(0.004, 0, 0, 0), 100, 0.2, 0.6, 1, false);
        var weak = new StoppingAxis(3, "x", "zone", coasting, null, null, hardest);
        var strong = new StoppingAxis(4, "y", "zone", coasting, null, null, null);
        StoppingResult result = study(
                zone(
                        StopCategory.CATEGORY_1,
                        0.03,
                        0.02,
                        safeguard(SafeguardStandard.ISO_13855_2010, new LightCurtain(new Length(0.014)), 0.03, 5.0)),
                weak,
                strong);
        ZoneStopping zone = result.zones().getFirst();
        assertThat(zone.stoppingTime()).isNull();
        assertThat(zone.axes().getFirst().distance()).isNull();
        assertThat(si(zone.axes().getLast().stoppingTime())).isCloseTo(0.05, within(1e-12));
        assertThat(zone.safeguards().getFirst().leastDistance()).isNull();
        assertThat(codes(result)).containsExactly(FindingCode.STUDY_STOP_TOO_HARD, FindingCode.STOPPING_SAFEGUARD_VAIN);
        assertThat(result.findings().getFirst().pointer()).isEqualTo("/design/axes/3");
    }

    /** A category 0 stop asks nothing of the drive unit. */
    @Test
    void aStopWithoutTorqueIsNeverTooHard() {
        var hardest = new LimitUse(DutyLimit.INTERMITTENT, new Torque(250), new Torque(30), 250.0 / 30, new Time(0.2));
        var axis = new StoppingAxis(
                0, "x", "zone", shuttle(load(0.004, 0, 1, 0), 100, 0.2, 0.6, 1, false), null, null, hardest);
        assertThat(codes(study(zone(StopCategory.CATEGORY_0, 0, 0.02), axis)))
                .containsExactly(FindingCode.STOPPING_BY_FRICTION);
    }

    /** What a brake does not state is not checked, and that is said. */
    @Test
    void aBrakeThatStatesNothingIsSaidToBeUnchecked() {
        Coasting down = shuttle(load(0.004, 2, 0, 0), -100, 0.2, 0.6, 1, true);
        StopZone zone = zone(StopCategory.CATEGORY_1, 0.03, 0.4);
        assertThat(codes(study(zone, axis(down, brake(6, 0.05, 0.9, 100.0)))))
                .doesNotContain(FindingCode.STOPPING_BRAKE_UNCHECKED);
        assertThat(codes(study(zone, axis(down, brake(6, 0.05, 0.9, null)))))
                .contains(FindingCode.STOPPING_BRAKE_UNCHECKED);
        assertThat(codes(study(zone, axis(down, brake(6, 0.05, null, 100.0)))))
                .contains(FindingCode.STOPPING_BRAKE_UNCHECKED);
    }
}
