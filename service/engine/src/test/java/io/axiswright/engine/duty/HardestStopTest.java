package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.design.Axis;
import org.junit.jupiter.api.Test;

/** The hardest stop of mechanisms that change along their way against stops begun at very many instants. */
class HardestStopTest {

    private static final long SEED = 99;
    private static final int SAMPLES = 1000;

    private static double highest(Course course) {
        double highest = 0;
        for (Course.Piece piece : course.pieces()) {
            highest = Math.max(highest, piece.torque().largestMagnitude(0, piece.duration()));
        }
        return highest;
    }

    @Test
    void noInstantIsHarderByMoreThanTheTolerance() {
        RandomAxes random = new RandomAxes(SEED);
        for (int n = 0; n < 40; n++) {
            Axis axis = random.nextUneven("seed " + SEED + " axis " + n);
            AxisLoad load = AxisLoad.of(axis);
            double inertia = 1e-3;
            double time = Fixtures.ZONE.decelerationTime().si();
            EvenStops stops = new EvenStops(load, inertia, time);
            if (stops.proven()) {
                continue;
            }
            HardestStop found = HardestStop.of(
                    load,
                    LoadSums.of(load.pieces(), load.period()).peakSpeed(),
                    inertia,
                    Fixtures.ZONE,
                    HardestStopTest::highest);
            double sampled = 0;
            for (LoadPiece piece : load.pieces()) {
                int count = Math.max(4, (int) (SAMPLES * piece.duration() / load.period()));
                for (int k = 0; k <= count; k++) {
                    double instant = piece.start() + piece.duration() * k / count;
                    sampled = Math.max(sampled, highest(stops.from(instant, piece.start() + piece.duration() / 2)));
                }
            }
            assertThat(sampled)
                    .as(axis.id())
                    .isLessThanOrEqualTo(found.size() * (1 + 1e-3))
                    .isGreaterThanOrEqualTo(found.size() * (1 - 1e-2));
        }
    }
}
