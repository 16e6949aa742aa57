package io.axiswright.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.ModifiedSine;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.Polynomial4567;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.LinearAcceleration;
import io.axiswright.engine.quantity.LinearJerk;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moves stated by any sufficient data come to the same course; the others are refused in so many words. */
class MoveMotionTest {

    /** Everything that can be stated of a move in a line. */
    record Stated(
            @Nullable Double distance,
            @Nullable Double duration,
            @Nullable Double topSpeed,
            @Nullable Double acceleration,
            @Nullable Double deceleration,
            @Nullable Double jerk) {

        Move move(MotionLaw law) {
            return new Move(
                    distance == null ? null : new Length(distance),
                    duration == null ? null : new Time(duration),
                    law,
                    topSpeed == null ? null : new Speed(topSpeed),
                    acceleration == null ? null : new LinearAcceleration(acceleration),
                    deceleration == null ? null : new LinearAcceleration(deceleration),
                    jerk == null ? null : new LinearJerk(jerk),
                    null,
                    null);
        }

        /** The data whose bits are set. */
        Stated only(int mask) {
            return new Stated(
                    (mask & 1) == 0 ? null : distance,
                    (mask & 2) == 0 ? null : duration,
                    (mask & 4) == 0 ? null : topSpeed,
                    (mask & 8) == 0 ? null : acceleration,
                    (mask & 16) == 0 ? null : deceleration,
                    (mask & 32) == 0 ? null : jerk);
        }
    }

    /** A trapezoid worked out by hand from its times: S = v·(t − (t1 + t2)/2). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void trapezoidsByWhateverFixesThem(long seed) {
        var random = new SplittableRandom(seed);
        for (int n = 0; n < 200; n++) {
            double t1 = random.nextDouble(0.05, 1);
            double t2 = random.nextDouble(0.05, 1);
            double t = t1 + t2 + random.nextDouble(0, 1);
            double v = random.nextDouble(0.1, 3);
            var all = new Stated(v * (t - (t1 + t2) / 2), t, v, v / t1, v / t2, null);
            int solved = 0;
            for (int mask = 0; mask < 32; mask++) {
                for (int shares = 0; shares < 4; shares++) {
                    var law = new Trapezoidal((shares & 1) == 0 ? null : t1 / t, (shares & 2) == 0 ? null : t2 / t);
                    boolean rising = (shares & 1) > 0 || (mask & 8) > 0;
                    boolean falling = (shares & 2) > 0 || (mask & 16) > 0;
                    int frame = Integer.bitCount(mask & 7);
                    if (rising && falling && frame >= 2 || (rising || falling) && frame == 3) {
                        solved++;
                        Motion motion = solve(all.only(mask).move(law));
                        String what = "seed " + seed + " move " + n + " mask " + mask + " shares " + shares;
                        assertThat(motion.duration()).as(what).isCloseTo(t, within(1e-9));
                        assertThat(motion.travel()).as(what).isCloseTo(v * (t - (t1 + t2) / 2), within(1e-9));
                        assertThat(speedAt(motion, t1 / 2)).as(what).isCloseTo(v / 2, within(1e-8));
                        assertThat(speedAt(motion, t - t2 / 4)).as(what).isCloseTo(v / 4, within(1e-8));
                    }
                }
            }
            assertThat(solved).isGreaterThan(30);
        }
    }

    /** An S-curve worked out by hand from its ramp r, its phase T and its acceleration. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void sCurvesByWhateverFixesThem(long seed) {
        var random = new SplittableRandom(seed);
        for (int n = 0; n < 200; n++) {
            double r = random.nextDouble(0.01, 0.2);
            double phase = 2 * r + random.nextDouble(0.01, 0.5);
            double t = 2 * phase + random.nextDouble(0.01, 1);
            double a = random.nextDouble(0.5, 20);
            double v = a * (phase - r);
            var all = new Stated(v * (t - phase), t, v, a, a, a / r);
            int solved = 0;
            for (int mask = 0; mask < 64; mask++) {
                for (int shares = 0; shares < 4; shares++) {
                    Double b = (shares & 1) == 0 ? null : phase / t;
                    Double s = (shares & 2) == 0 ? null : 2 * r / phase;
                    int frame = Integer.bitCount(mask & 7);
                    int shape = ((mask & 24) > 0 ? 1 : 0) + ((mask & 32) > 0 ? 1 : 0) + (s != null ? 1 : 0);
                    boolean enough = frame == 3 && shape >= 1
                            || frame == 2 && (shape >= 2 || b != null && shape >= 1)
                            || frame == 1 && b != null && s != null && shape >= 2;
                    if (enough) {
                        solved++;
                        Motion motion = solve(all.only(mask).move(new SCurve(b, s)));
                        String what = "seed " + seed + " move " + n + " mask " + mask + " shares " + shares;
                        assertThat(motion.duration()).as(what).isCloseTo(t, within(1e-8));
                        assertThat(motion.travel()).as(what).isCloseTo(v * (t - phase), within(1e-8));
                        assertThat(speedAt(motion, phase / 2)).as(what).isCloseTo(v / 2, within(1e-7));
                        assertThat(speedAt(motion, r)).as(what).isCloseTo(a * r / 2, within(1e-6));
                        assertThat(motion.belowTopSpeed()).as(what).isFalse();
                    }
                }
            }
            assertThat(solved).isGreaterThan(60);
        }
    }

    /** Laws without open shares: top speed Cv·S/t, acceleration Ca·S/t², jerk Cj·S/t³ (printed coefficients). */
    @Test
    void fixedLawsByAnyTwo() {
        double pi = Math.PI;
        any(new Triangular(), 2, 4, 0);
        any(new Cycloidal(), 2, 2 * pi, 4 * pi * pi);
        any(new Polynomial345(), 15 / 8.0, 10 / Math.sqrt(3), 60);
        any(new Polynomial4567(), 35 / 16.0, 84 / (5 * Math.sqrt(5)), 52.5);
        any(new ModifiedSine(), 4 * pi / (4 + pi), 4 * pi * pi / (4 + pi), 16 * pi * pi * pi / (4 + pi));
    }

    private static void any(MotionLaw law, double cv, double ca, double cj) {
        double s = 0.7;
        double t = 1.3;
        double a = ca * s / t / t;
        var all = new Stated(s, t, cv * s / t, a, a, cj == 0 ? null : cj * s / t / t / t);
        int data = cj == 0 ? 32 : 64;
        for (int mask = 0; mask < data; mask++) {
            int kinds = Integer.bitCount(mask & 0b100111) + ((mask & 24) > 0 ? 1 : 0);
            List<Fault> faults = new ArrayList<>();
            Motion motion = SegmentMotion.of(all.only(mask).move(law), "/m", faults);
            if (kinds < 2) {
                assertThat(faults).extracting(Fault::code).as(law + " " + mask).containsExactly(FaultCode.MISSING);
            } else {
                assertThat(motion).as(law + " " + mask).isNotNull();
                assertThat(Objects.requireNonNull(motion).duration()).isCloseTo(t, within(1e-9));
                assertThat(motion.travel()).isCloseTo(s, within(1e-9));
            }
        }
    }

    /** 190 m, 305 m/min, 1.22 m/s² both ways; printed 4.17 s to speed, 41.5 s in all (jiskha.com/questions/2196). */
    @Test
    void publishedRun() {
        Motion motion = solve(new Stated(190.0, null, 305 / 60.0, 1.22, null, null).move(new Trapezoidal(null, null)));
        assertThat(motion.duration()).isCloseTo(41.5437, within(1e-3));
        assertThat(motion.stretches().getFirst().length()).isCloseTo(4.1667, within(1e-3));
    }

    /**
     * 100 m, 2 and 4 m/s²: peak sqrt(2abD/(a + b)) (formula read at tech-champion.com, velocity-time profiles); 16.3299 m/s
     * and 12.2474 s, worked out from it.
     */
    @Test
    void moveTooShortForItsTopSpeed() {
        Motion motion = solve(new Stated(100.0, null, 20.0, 2.0, 4.0, null).move(new Trapezoidal(null, null)));
        assertThat(motion.belowTopSpeed()).isTrue();
        assertThat(motion.duration()).isCloseTo(12.2474, within(1e-4));
        assertThat(speedAt(motion, 16.32993 / 2)).isCloseTo(16.3299, within(1e-4));
        Motion curve = solve(new Stated(0.01, null, 5.0, 50.0, null, 1000.0).move(new SCurve(null, null)));
        // S = 2·j·r³ where neither speed nor acceleration is reached
        assertThat(curve.belowTopSpeed()).isTrue();
        assertThat(curve.duration()).isCloseTo(4 * Math.cbrt(0.01 / 2000), within(1e-9));
    }

    @Test
    void directionFollowsDistanceOrTopSpeed() {
        assertThat(solve(new Stated(-1.0, 1.0, null, null, null, null).move(new Triangular()))
                        .travel())
                .isCloseTo(-1, within(1e-12));
        assertThat(solve(new Stated(-1.0, null, 2.0, null, null, null).move(new Triangular()))
                        .travel())
                .isCloseTo(-1, within(1e-12));
        assertThat(solve(new Stated(null, 1.0, -2.0, null, null, null).move(new Triangular()))
                        .travel())
                .isCloseTo(-1, within(1e-12));
        assertThat(solve(new Stated(0.0, 1.0, null, null, null, null).move(new Triangular()))
                        .travelled())
                .isZero();
    }

    @Test
    void whatCannotBeIsRefusedWithWhatCould() {
        refused(new Stated(2.0, 2.0, 1.0, null, null, null), new Trapezoidal(null, null), "/m/topSpeed", "1 m/s");
        refused(new Stated(2.0, 2.0, 2.5, null, null, null), new Trapezoidal(null, null), "/m/topSpeed", "2 m/s");
        refused(new Stated(2.0, 1.0, null, 4.0, null, null), new Trapezoidal(null, null), "/m/duration", "1.414 s");
        refused(new Stated(null, 1.0, 3.0, 4.0, null, null), new Trapezoidal(null, null), "/m/duration", "longer");
        refused(new Stated(1.0, 1.0, 1.5, 50.0, null, null), new Triangular(), "/m/topSpeed", "2 m/s");
        refused(new Stated(1.0, 1.0, null, null, null, 5.0), new Triangular(), "/m/jerk", "no jerk");
        refused(new Stated(1.0, 1.0, null, 6.0, 5.0, null), new SCurve(null, 0.5), "/m/deceleration", "6 m/s2");
        refused(new Stated(1.0, 0.2, null, 6.0, null, 50.0), new SCurve(null, null), "/m/duration", "longer");
        refused(new Stated(1.0, 1.0, 1.5, 2.0, null, null), new SCurve(null, null), "/m/acceleration", "4.5 m/s2");
        refused(new Stated(1.0, null, -1.0, 2.0, null, null), new Triangular(), "/m/topSpeed", "sign");
        refused(new Stated(1.0, null, 0.0, 2.0, null, null), new Triangular(), "/m/topSpeed", "dwell");
        refused(
                new Stated(1.0, 1.0, 1.2, 20.0, null, null),
                new Trapezoidal(0.9, 0.3),
                "/m/law/decelerationShare",
                "1");
        refused(new Stated(1.0, null, 1.0, null, null, null), new Trapezoidal(null, null), "/m", "acceleration");
        refused(new Stated(null, null, null, null, null, null), new SCurve(null, null), "/m", "two of distance");
        refused(new Stated(0.0, null, null, null, null, null), new Triangular(), "/m", "duration");
    }

    /** 1 m in 1 s by triangles peaks at 2 m/s with 4 m/s²: 1.5 m/s clashes with distance and duration, and the rest is told too. */
    @Test
    void dataThatClashAreNamed() {
        List<Fault> faults = new ArrayList<>();
        SegmentMotion.of(new Stated(1.0, 1.0, 1.5, 4.0, null, null).move(new Triangular()), "/m", faults);
        assertThat(faults)
                .extracting(Fault::pointer, Fault::detail)
                .containsExactly(tuple(
                        "/m/topSpeed",
                        "1.5 m/s is stated, but the other data of the move give 2 m/s; stated beside it: distance, duration, "
                                + "acceleration"));
        List<Fault> alone = new ArrayList<>();
        SegmentMotion.of(new Stated(1.0, null, 0.0, 2.0, null, null).move(new Triangular()), "/m", alone);
        assertThat(alone).extracting(Fault::detail).containsExactly("the top speed of a move is 0");
    }

    private static void refused(Stated stated, MotionLaw law, String pointer, String accepted) {
        List<Fault> faults = new ArrayList<>();
        assertThat(SegmentMotion.of(stated.move(law), "/m", faults)).as(pointer).isNull();
        assertThat(faults.getFirst().pointer()).isEqualTo(pointer);
        assertThat(faults.getFirst().accepted()).contains(accepted);
    }

    private static Motion solve(Move move) {
        List<Fault> faults = new ArrayList<>();
        Motion motion = SegmentMotion.of(move, "/m", faults);
        assertThat(faults).as(move.toString()).isEmpty();
        return Objects.requireNonNull(motion);
    }

    private static double speedAt(Motion motion, double instant) {
        Motion.Stretch stretch = motion.stretches().stream()
                .filter(s -> instant <= s.start() + s.length())
                .findFirst()
                .orElse(motion.stretches().getLast());
        return stretch.speed().at(instant - stretch.start());
    }
}
