package io.axiswright.engine.duty;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.numeric.WorstInstant;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The controlled stop that is hardest by some measure, over all instants of the cycle.
 *
 * <p>Where the load is the same everywhere, torque depends on the speed alone and the stops from its extremes decide. Where it
 * changes along the way, the instants are halved until what three neighbours show of the measure's bend, taken twice, leaves
 * less than a thousandth to be gained: a judgement that becomes right as the intervals narrow, no proof.
 *
 * @param size the measure
 * @param instant when in the cycle the stop begins, s
 * @param course the stop
 */
record HardestStop(double size, double instant, Course course) {

    private static final HardestStop NONE = new HardestStop(0, 0, new Course(List.of()));

    private static final WorstInstant.Tolerance TOLERANCE = new WorstInstant.Tolerance(1e-3, 0);
    private static final int MOST_INSTANTS = 400;
    private static final double MARGIN = 2;

    /**
     * Finds it.
     *
     * @param load the axis
     * @param peakSpeed its greatest speed, rad/s
     * @param inertia inertia of the motor and what turns with it, kg·m²
     * @param zone its stop zone; none if absent
     * @param measure of one stop; not negative
     */
    static HardestStop of(
            AxisLoad load,
            double peakSpeed,
            double inertia,
            @Nullable StopZone zone,
            ToDoubleFunction<Course> measure) {
        if (zone == null || zone.category() == StopCategory.CATEGORY_0) {
            return NONE;
        }
        EvenStops stops = new EvenStops(load, inertia, zone.decelerationTime().si());
        return stops.proven() ? ofExtremes(load, peakSpeed, inertia, zone, measure) : refined(stops, measure);
    }

    private static HardestStop ofExtremes(
            AxisLoad load, double peakSpeed, double inertia, StopZone zone, ToDoubleFunction<Course> measure) {
        HardestStop hardest = NONE;
        for (StopCourse stop : Stops.of(load, peakSpeed, inertia, zone)) {
            double size = measure.applyAsDouble(stop.course());
            if (size > hardest.size()) {
                hardest = new HardestStop(size, stop.instant(), stop.course());
            }
        }
        return hardest;
    }

    private static HardestStop refined(EvenStops stops, ToDoubleFunction<Course> measure) {
        WorstInstant worst = WorstInstant.of(new Sampled(stops, measure), stops.cuts(), TOLERANCE, MOST_INSTANTS);
        return new HardestStop(
                Math.max(0, worst.value()), worst.instant(), stops.from(worst.instant(), worst.beside()));
    }

    private record Sampled(EvenStops stops, ToDoubleFunction<Course> measure) implements WorstInstant.Objective {

        @Override
        public double value(double instant, double beside) {
            return measure.applyAsDouble(stops.from(instant, beside));
        }

        @Override
        public double bound(double from, double to, double atFrom, double atTo, double enough) {
            double middle = (from + to) / 2;
            double between = value(middle, middle);
            double bend = Math.abs(atFrom - 2 * between + atTo) / 2;
            return Math.max(between, Math.max(atFrom, atTo)) + MARGIN * bend;
        }
    }
}
