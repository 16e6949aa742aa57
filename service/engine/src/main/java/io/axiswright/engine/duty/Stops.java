package io.axiswright.engine.duty;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The controlled stops an axis may have to make. */
final class Stops {

    /** Speeds this close to each other, as a share of the peak speed, start the same stop; slower than that is rest. */
    private static final double RESOLUTION = 1e-9;

    private Stops() {}

    /** Where a stop starts; all else about it is the same on one axis. */
    private record Start(LoadEffort effort, long speed) {}

    /**
     * The distinct stops begun wherever in the cycle a stop can be the worst: at the ends of every piece and where speed or
     * power turn. Each is an even deceleration to rest within the zone's time, under the load of the segment it interrupts.
     *
     * @param load the axis
     * @param peakSpeed its greatest speed, rad/s
     * @param inertia inertia of the motor and what turns with it, kg·m²
     * @param zone its stop zone
     */
    static List<StopCourse> of(AxisLoad load, double peakSpeed, double inertia, StopZone zone) {
        if (zone.category() == StopCategory.CATEGORY_0) {
            return List.of();
        }
        double time = zone.decelerationTime().si();
        Set<Start> known = new HashSet<>();
        List<StopCourse> stops = new ArrayList<>();
        for (LoadPiece piece : load.pieces()) {
            for (double t : instants(piece, inertia)) {
                double speed = piece.speed().at(t);
                long step = Math.round(speed / (RESOLUTION * peakSpeed));
                if (step != 0 && known.add(new Start(piece.effort(), step))) {
                    stops.add(new StopCourse(
                            piece.start() + t, stop(load, piece.effort(), speed, Math.signum(speed), inertia, time)));
                }
            }
        }
        return stops;
    }

    private static List<Double> instants(LoadPiece piece, double inertia) {
        List<Double> instants = new ArrayList<>(piece.speed().extremalPoints(0, piece.duration()));
        instants.addAll(piece.torque(inertia).times(piece.speed()).derivative().signChanges(0, piece.duration()));
        instants.sort(null);
        return instants;
    }

    /**
     * One stop.
     *
     * @param motorSpeed speed it starts from, rad/s
     * @param direction sign of the speed, also where it is only just about to move
     */
    static Course stop(
            AxisLoad load, LoadEffort effort, double motorSpeed, double direction, double inertia, double time) {
        double speed = motorSpeed / load.drivetrain().motorTurn();
        Polynomial falling = Polynomial.of(speed, -speed / time);
        List<LoadPiece> pieces = load.drivetrain().moving(effort, 0, time, falling, direction);
        return AxisLoad.course(pieces, inertia);
    }
}
