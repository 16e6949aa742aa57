package io.axiswright.engine.motion;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A move whose course is known.
 *
 * @param law its law
 * @param distance how far it goes, as a magnitude
 * @param duration how long it lasts, s
 * @param belowTopSpeed whether it is too short for the top speed that limits it
 * @param belowAcceleration whether it is too slow for the acceleration that limits it
 */
record ShapedMove(
        NormalisedLaw law, double distance, double duration, boolean belowTopSpeed, boolean belowAcceleration) {

    private record Known(int power, double coefficient, double value) {}

    ShapedMove(NormalisedLaw law, double distance, double duration) {
        this(law, distance, duration, false, false);
    }

    /**
     * The move of a law without open shares. Each datum x = C·S/t^k of power k (distance 0, speed 1, acceleration 2, jerk 3)
     * fixes the distance S for a duration t; two of different power fix both.
     */
    static @Nullable ShapedMove of(NormalisedLaw law, MoveData data) {
        List<Known> known = new ArrayList<>();
        add(known, 0, 1, data.distance());
        add(known, 1, law.topSpeed(), data.topSpeed());
        add(known, 2, law.acceleration(), data.acceleration());
        if (data.acceleration() == null) {
            add(known, 2, law.deceleration(), data.deceleration());
        }
        if (Double.isFinite(law.jerk())) {
            add(known, 3, law.jerk(), data.jerk());
        }
        if (known.isEmpty() || known.size() == 1 && data.duration() == null) {
            data.missing("two of distance, duration, topSpeed, acceleration"
                    + (Double.isFinite(law.jerk()) ? " and jerk" : ""));
            return null;
        }
        Known first = known.get(0);
        double duration = data.duration() != null ? data.duration() : duration(first, known.get(1));
        return new ShapedMove(law, first.value * Math.pow(duration, first.power) / first.coefficient, duration);
    }

    private static double duration(Known low, Known high) {
        double ratio = high.coefficient * low.value / (low.coefficient * high.value);
        return Math.pow(ratio, 1.0 / (high.power - low.power));
    }

    private static void add(List<Known> known, int power, double coefficient, @Nullable Double value) {
        if (value != null) {
            known.add(new Known(power, coefficient, value));
        }
    }
}
