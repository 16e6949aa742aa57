package io.axiswright.engine.braking;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One controlled stop of one axis, with what makes it bad for the bus.
 *
 * @param power power returned, from the start of deceleration
 * @param energy highest net energy returned by any instant, J
 * @param total net energy over the whole stop, J; negative if it takes more than it returns
 * @param peak highest power, W
 */
record StopCandidate(PowerCourse power, double energy, double total, double peak) {

    static StopCandidate of(PowerCourse power) {
        double total = 0;
        for (PowerCourse.Piece piece : power.pieces()) {
            total += piece.power().integral(0, piece.end() - piece.start());
        }
        return new StopCandidate(power, power.highestNetEnergy(), total, power.peak());
    }

    /** The worst by a criterion; of several alike the first. */
    static Optional<StopCandidate> worst(List<StopCandidate> candidates, StopCriterion criterion) {
        Comparator<StopCandidate> byEnergy =
                Comparator.comparingDouble(StopCandidate::energy).thenComparingDouble(StopCandidate::total);
        Comparator<StopCandidate> by = switch (criterion) {
            case MOST_ENERGY -> byEnergy.thenComparingDouble(StopCandidate::peak);
            case MOST_POWER -> Comparator.comparingDouble(StopCandidate::peak).thenComparing(byEnergy);
        };
        return candidates.stream().reduce((a, b) -> by.compare(b, a) > 0 ? b : a);
    }
}
