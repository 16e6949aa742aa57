package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What stops begun between two instants are said to differ by at most, against stops begun there: their courses are worked out
 * piece by piece, another way than the bounds go.
 */
class StopBendTest {

    private static final int BETWEEN = 7;
    private static final int TIMES = 200;

    /** With what the samples leave of the bounds over narrow intervals, the best of each axis: the bounds are no empty ones. */
    @ParameterizedTest
    @ValueSource(longs = {211, 212})
    void noStopBendsByMore(long seed) {
        UnevenAxes axes = new UnevenAxes(seed);
        int seen = 0;
        int close = 0;
        for (int n = 0; n < 60; n++) {
            var random = new SplittableRandom(seed + n);
            var next = axes.next("seed " + seed + " axis " + n, random.nextDouble(0.05, 0.5));
            if (next.isEmpty()) {
                continue;
            }
            UnevenAxes.Moving axis = next.get();
            double copper = random.nextDouble(0, 0.4) * axis.peakSpeed() / axis.peakTorque();
            double best = 0;
            for (int run = 0; run < 12; run++) {
                double[] cuts = axis.stops().cuts();
                int k = random.nextInt(cuts.length - 1);
                double width = (cuts[k + 1] - cuts[k]) * Math.pow(10, -random.nextDouble(0, 3));
                double from = cuts[k] + random.nextDouble() * (cuts[k + 1] - cuts[k] - width);
                best = Math.max(best, bounded(axis, from, from + width, copper));
            }
            seen++;
            close += best > 0.1 ? 1 : 0;
        }
        assertThat(seen).isGreaterThan(25);
        assertThat(close).isGreaterThan(seen * 2 / 3);
    }

    /** Holds an interval's bounds against stops; the share of the bound of energy that they reach, 0 where nothing moves. */
    private static double bounded(UnevenAxes.Moving axis, double from, double to, double copper) {
        PowerBend bound = axis.stops().bend(from, to, copper);
        double scale = axis.peakSpeed() * axis.peakTorque();
        double[] first = returned(axis.stops(), from, (from + to) / 2, copper);
        double[] last = returned(axis.stops(), to, (from + to) / 2, copper);
        double most = 0;
        for (int k = 1; k <= BETWEEN; k++) {
            double share = k / (BETWEEN + 1.0);
            double[] power = returned(axis.stops(), from + share * (to - from), (from + to) / 2, copper);
            double energy = 0;
            for (int t = 0; t < TIMES; t++) {
                double over = power[t] - (1 - share) * first[t] - share * last[t];
                assertThat(over).as(axis.id()).isLessThanOrEqualTo(bound.power() + 1e-8 * scale);
                assertThat(power[t]).as(axis.id()).isLessThanOrEqualTo(bound.highest() + 1e-8 * scale);
                energy += Math.max(0, over) * axis.stops().duration() / TIMES;
            }
            most = Math.max(most, energy);
        }
        // what jumps within a stop falls between the times looked at
        double spacing = scale * axis.stops().duration() / TIMES;
        assertThat(most)
                .as(axis.id())
                .isLessThanOrEqualTo(bound.energy() + (bound.power() > 0.1 * scale ? spacing : 1e-8 * scale));
        return bound.energy() > 0 ? most / bound.energy() : 0;
    }

    private static double[] returned(StopModel stops, double instant, double beside, double copper) {
        Course course = stops.from(instant, beside);
        double[] power = new double[TIMES];
        int k = 0;
        for (int t = 0; t < TIMES && !course.pieces().isEmpty(); t++) {
            double time = stops.duration() * (t + 0.5) / TIMES;
            while (course.pieces().get(k).end() < time) {
                k++;
            }
            Course.Piece piece = course.pieces().get(k);
            double torque = piece.torque().at(time - piece.start());
            power[t] = -torque * (piece.speed().at(time - piece.start()) + copper * torque);
        }
        return power;
    }
}
