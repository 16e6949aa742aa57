package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import java.util.Optional;

/** Random axes whose torque changes along their way, with their stops. */
public final class UnevenAxes {

    private static final double INERTIA = 1e-3;

    private final RandomAxes random;

    /** Axes drawn from a seed. */
    public UnevenAxes(long seed) {
        random = new RandomAxes(seed);
    }

    /**
     * What one does.
     *
     * @param id for messages, with its mechanism
     * @param course its cycle
     * @param stops its stops
     */
    public record Moving(String id, Course course, StopModel stops) {

        /** The highest torque of the cycle, N·m. */
        public double peakTorque() {
            return StopMeasure.highest(course);
        }

        /** Its highest speed, rad/s. */
        public double peakSpeed() {
            return course.pieces().stream()
                    .mapToDouble(piece -> piece.speed().largestMagnitude(0, piece.duration()))
                    .max()
                    .orElse(0);
        }
    }

    /**
     * The next; empty if that one stands still or is the same everywhere along its way.
     *
     * @param duration of its stops, s
     */
    public Optional<Moving> next(String id, double duration) {
        Axis axis = random.nextUneven(id);
        AxisLoad load = AxisLoad.of(axis);
        EvenStops stops = new EvenStops(load, INERTIA, duration);
        String name = axis.mechanism().getClass().getSimpleName() + " " + id;
        var moving = new Moving(name, load.course(INERTIA), stops);
        return stops.level() || moving.peakSpeed() == 0 ? Optional.empty() : Optional.of(moving);
    }
}
