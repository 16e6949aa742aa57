package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.numeric.WorstPlace;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The hardest stop of mechanisms that change along their way against stops begun at very many instants, their courses worked out
 * piece by piece, another way than the search goes.
 */
class HardestStopTest {

    private static final int SAMPLES = 1000;
    private static final double INERTIA = 1e-3;

    private static EvenStops stops(Axis axis) {
        return new EvenStops(
                AxisLoad.of(axis), INERTIA, Fixtures.ZONE.decelerationTime().si());
    }

    /** Nothing sampled is harder by more than the tolerance; the samples come near it, as near as their spacing allows. */
    @ParameterizedTest
    @ValueSource(longs = {99, 100})
    void noInstantIsHarderByMoreThanTheTolerance(long seed) {
        RandomAxes random = new RandomAxes(seed);
        int seen = 0;
        for (int n = 0; n < 40; n++) {
            Axis axis = random.nextUneven("seed " + seed + " axis " + n);
            EvenStops stops = stops(axis);
            AxisLoad load = stops.load();
            double peakSpeed = LoadSums.of(load.pieces(), load.period()).peakSpeed();
            if (stops.level() || peakSpeed == 0) {
                continue;
            }
            for (StopMeasure measure : List.of(StopMeasure.TORQUE, new StopMeasure(curve(peakSpeed)))) {
                HardestStop found = HardestStop.of(load, peakSpeed, INERTIA, Fixtures.ZONE, measure);
                assertThat(sampled(stops, measure))
                        .as(axis.id())
                        .isLessThanOrEqualTo(found.size() * (1 + StopSearch.TOLERANCE))
                        .isGreaterThanOrEqualTo(found.size() * (1 - 3e-2));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(30);
    }

    /** Level, then falling ever faster. */
    private static TorqueCurve curve(double topSpeed) {
        return TorqueCurve.of(
                List.of(
                        Fixtures.point(0.3 * topSpeed, 50),
                        Fixtures.point(0.7 * topSpeed, 40),
                        Fixtures.point(1.01 * topSpeed, 12)),
                1);
    }

    private static double sampled(EvenStops stops, StopMeasure measure) {
        double highest = 0;
        for (LoadPiece piece : stops.load().pieces()) {
            int count =
                    Math.max(4, (int) (SAMPLES * piece.duration() / stops.load().period()));
            for (int k = 0; k <= count; k++) {
                double instant = piece.start() + piece.duration() * k / count;
                highest = Math.max(highest, measure.of(stops.from(instant, piece.start() + piece.duration() / 2)));
            }
        }
        return highest;
    }

    /** What is told of a limit before the hardest stop is found is what that one tells; near it nothing is told. */
    @Test
    void aLimitIsHeldAgainstWhatTheHardestStopTells() {
        RandomAxes random = new RandomAxes(102);
        int told = 0;
        for (int n = 0; n < 40; n++) {
            Axis axis = random.nextUneven("seed 102 axis " + n);
            EvenStops stops = stops(axis);
            double hardest = HardestStop.of(stops.load(), 0, INERTIA, Fixtures.ZONE, StopMeasure.TORQUE)
                    .size();
            if (stops.level() || hardest == 0) {
                continue;
            }
            for (double share : new double[] {0.3, 0.9, 0.999, 1 - 1e-6, 1 + 1e-6, 1.001, 1.1, 3}) {
                Boolean exceeds = HardestStop.exceeds(stops.load(), INERTIA, Fixtures.ZONE, share * hardest);
                if (Math.abs(share - 1) > StopSearch.TOLERANCE) {
                    assertThat(exceeds).as("%s at %s", axis.id(), share).isEqualTo(share < 1);
                    told++;
                } else if (exceeds != null) {
                    assertThat(exceeds).as("%s at %s", axis.id(), share).isEqualTo(share < 1);
                }
            }
        }
        assertThat(told).isGreaterThan(100);
    }

    /** The search ends by proof, not by patience, and its formulas are those of the courses. */
    @Test
    void theSearchClosesItsGap() {
        RandomAxes random = new RandomAxes(101);
        int seen = 0;
        for (int n = 0; n < 40; n++) {
            Axis axis = random.nextUneven("seed 101 axis " + n);
            EvenStops stops = stops(axis);
            StopSearch search = StopSearch.of(stops, StopMeasure.TORQUE);
            if (search.stretches().isEmpty()) {
                continue;
            }
            WorstPlace worst = search.worst();
            assertThat(worst.bound()).as(axis.id()).isLessThanOrEqualTo(worst.value() * (1 + StopSearch.TOLERANCE));
            double time = stops.duration() * worst.y();
            Course.Piece piece = stops.from(search.instant(worst), search.beside(worst)).pieces().stream()
                    .filter(one -> time <= one.end())
                    .findFirst()
                    .orElseThrow();
            assertThat(Math.abs(piece.torque().at(time - piece.start())))
                    .as(axis.id())
                    .isCloseTo(worst.value(), within(1e-8 * worst.value()));
            seen++;
        }
        assertThat(seen).isGreaterThan(20);
    }
}
