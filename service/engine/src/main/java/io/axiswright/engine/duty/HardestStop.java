package io.axiswright.engine.duty;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.numeric.WorstPlace;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The controlled stop that is hardest by some measure, over all instants of the cycle.
 *
 * <p>Where the load is the same everywhere, torque depends on the speed alone and the stops from its extremes decide. Where it
 * changes along the way, {@link StopSearch} leaves no more than a ten-thousandth to be gained.
 *
 * @param size the measure
 * @param instant when in the cycle the stop begins, s
 * @param course the stop
 */
record HardestStop(double size, double instant, Course course) {

    private static final HardestStop NONE = new HardestStop(0, 0, new Course(List.of()));

    /**
     * Finds it.
     *
     * @param load the axis
     * @param peakSpeed its greatest speed, rad/s
     * @param inertia inertia of the motor and what turns with it, kg·m²
     * @param zone its stop zone; none if absent
     * @param measure of one stop
     */
    static HardestStop of(
            AxisLoad load, double peakSpeed, double inertia, @Nullable StopZone zone, StopMeasure measure) {
        if (zone == null || zone.category() == StopCategory.CATEGORY_0) {
            return NONE;
        }
        EvenStops stops = new EvenStops(load, inertia, zone.decelerationTime().si());
        return stops.level() ? ofExtremes(load, peakSpeed, inertia, zone, measure) : searched(stops, measure);
    }

    /**
     * Whether the highest torque of all stops is greater than one, N·m, where bounds tell so without finding it; null if they do
     * not, or if finding it is as cheap.
     */
    static @Nullable Boolean exceeds(AxisLoad load, double inertia, @Nullable StopZone zone, double torque) {
        if (zone == null || zone.category() == StopCategory.CATEGORY_0) {
            return null;
        }
        EvenStops stops = new EvenStops(load, inertia, zone.decelerationTime().si());
        return stops.level() ? null : StopSearch.of(stops, StopMeasure.TORQUE).exceeds(torque);
    }

    /**
     * The greatest torque the load of a mechanism that is the same all along its way asks for at the mechanism's shaft in a stop,
     * before any loss, N·m; 0 if there is none. It goes with the speed along a straight line, so the stops from the highest decide.
     */
    static double pull(GearedLoad way) {
        StopZone zone = way.zone();
        if (zone == null || zone.category() == StopCategory.CATEGORY_0) {
            return 0;
        }
        double hardest = 0;
        @Nullable LoadPiece known = null;
        for (LoadPiece piece : way.load().pieces()) {
            if (piece.fastest() > 0 && (known == null || !covers(known, piece))) {
                hardest = Math.max(hardest, pull(piece, zone.decelerationTime().si()));
                known = piece;
            }
        }
        return hardest;
    }

    private static boolean covers(LoadPiece known, LoadPiece piece) {
        return known.effort() == piece.effort()
                && known.fastest() >= piece.fastest()
                && direction(known) == direction(piece);
    }

    private static double direction(LoadPiece piece) {
        return Math.signum(piece.speed().at(piece.duration() / 2));
    }

    private static double pull(LoadPiece piece, double time) {
        double instant = Extreme.ofMagnitude(piece.speed(), 0, piece.duration()).at();
        double speed = piece.position().derivative().at(instant);
        LoadMotion motion = LoadMotion.of(
                piece.position().at(instant), Polynomial.of(speed, -speed / time), time, Math.signum(speed));
        double hardest = 0;
        for (ShaftPiece part : piece.effort().held(instant).moving(motion)) {
            hardest = Math.max(hardest, part.torque().largestMagnitude(0, part.duration()));
        }
        return hardest;
    }

    private static HardestStop ofExtremes(
            AxisLoad load, double peakSpeed, double inertia, StopZone zone, StopMeasure measure) {
        HardestStop hardest = NONE;
        for (StopCourse stop : Stops.of(load, peakSpeed, inertia, zone)) {
            double size = measure.of(stop.course());
            if (size > hardest.size()) {
                hardest = new HardestStop(size, stop.instant(), stop.course());
            }
        }
        return hardest;
    }

    private static HardestStop searched(EvenStops stops, StopMeasure measure) {
        StopSearch search = StopSearch.of(stops, measure);
        if (search.stretches().isEmpty()) {
            return NONE;
        }
        WorstPlace worst = search.worst();
        double instant = search.instant(worst);
        Course course = stops.from(instant, search.beside(worst));
        return new HardestStop(measure.of(course), instant, course);
    }
}
