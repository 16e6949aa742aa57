package io.axiswright.engine.duty;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;

/** The controlled stops an axis may have to make. */
final class Stops {

    /** Speeds this close to each other, as a share of the peak speed, start the same stop; slower than that is rest. */
    private static final double RESOLUTION = 1e-9;

    private Stops() {}

    /** Where a stop starts; all else about it is the same on one axis. */
    private record Start(LoadEffort effort, long speed) {}

    /**
     * The distinct stops begun wherever in the cycle a stop can be the worst, if the torque does not depend on the position: at
     * the ends of every piece and where speed or power turn. Each is an even deceleration to rest within the zone's time, under
     * the load of the segment it interrupts.
     *
     * @param load the axis, the same everywhere along its way
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
                if (known.add(start(piece, t, peakSpeed)) && moves(piece, t, peakSpeed)) {
                    double direction = Math.signum(piece.position().derivative().at(t));
                    stops.add(new StopCourse(piece.start() + t, stop(load, piece, t, direction, inertia, time)));
                }
            }
        }
        return stops;
    }

    private static Start start(LoadPiece piece, double t, double peakSpeed) {
        return new Start(piece.effort(), Math.round(piece.speed().at(t) / (RESOLUTION * peakSpeed)));
    }

    private static boolean moves(LoadPiece piece, double t, double peakSpeed) {
        return Math.abs(piece.speed().at(t)) > RESOLUTION * peakSpeed / 2;
    }

    private static double[] instants(LoadPiece piece, double inertia) {
        Polynomial power = piece.torque(inertia).times(piece.speed());
        return DoubleStream.concat(
                        DoubleStream.of(piece.speed().extremalPoints(0, piece.duration())),
                        DoubleStream.of(power.derivative().signChanges(0, piece.duration())))
                .sorted()
                .toArray();
    }

    /**
     * One stop.
     *
     * @param piece what it interrupts
     * @param t since the start of that piece, s
     * @param direction sign of the load's speed, also where it is only just about to move
     */
    static Course stop(AxisLoad load, LoadPiece piece, double t, double direction, double inertia, double time) {
        double speed = piece.position().derivative().at(t);
        Polynomial falling = Polynomial.of(speed, -speed / time);
        LoadMotion motion = LoadMotion.of(piece.position().at(t), falling, time, direction);
        return load.drivetrain().course(piece.effort().held(t), motion, inertia);
    }
}
