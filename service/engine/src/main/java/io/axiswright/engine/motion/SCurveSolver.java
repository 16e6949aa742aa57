package io.axiswright.engine.motion;

import io.axiswright.engine.design.SCurve;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * S-curves by any sufficient set of distance S, duration t, top speed v, acceleration a, jerk j and the two shares b and s.
 * With the time T of an acceleration phase and r of one jerk ramp: S = v·(t − T), v = a·(T − r), a = j·r, b = T/t, s = 2r/T.
 */
final class SCurveSolver {

    private static final double ROUNDING = 1e-9;

    private static final String ACCEPTED = "two of distance, duration and topSpeed with two of acceleration, jerk and"
            + " jerkShare; or all three, or an accelerationShare, with one of these";

    private final MoveData data;
    private final @Nullable Double jerkShare;
    private final @Nullable Double acceleration;

    private SCurveSolver(MoveData data, @Nullable Double jerkShare) {
        this.data = data;
        this.jerkShare = jerkShare;
        this.acceleration = data.acceleration() != null ? data.acceleration() : data.deceleration();
    }

    static @Nullable ShapedMove solve(SCurve law, MoveData data) {
        Double share = law.accelerationShare();
        if (share != null && share > 0.5 + ROUNDING) {
            data.impossible(
                    "law/accelerationShare",
                    "each of two acceleration phases takes a share of " + share,
                    "a share of at most 0.5");
            return null;
        }
        if (share != null && law.jerkShare() != null) {
            return ShapedMove.of(NormalisedLaw.sCurve(share, law.jerkShare()), data);
        }
        SCurveSolver solver = new SCurveSolver(data, law.jerkShare());
        if (data.frame() == 3 || share != null && data.frame() == 2) {
            return solver.byFrame(share);
        }
        return data.frame() == 2 ? solver.byPhase() : solver.tooLittle();
    }

    private @Nullable ShapedMove tooLittle() {
        data.missing(ACCEPTED);
        return null;
    }

    /** The phase's time is known from all three of distance, duration and top speed, or from its share. */
    private @Nullable ShapedMove byFrame(@Nullable Double stated) {
        if (MoveData.count(jerkShare, acceleration, data.jerk()) == 0) {
            return tooLittle();
        }
        Double share = data.frame() == 3 ? shareOfFrame() : stated;
        if (share == null) {
            return null;
        }
        double rest = 1 - share;
        double time =
                data.duration() != null ? data.duration() : known(data.distance()) / known(data.topSpeed()) / rest;
        double speed = data.topSpeed() != null ? data.topSpeed() : known(data.distance()) / (time * rest);
        double distance = data.distance() != null ? data.distance() : speed * time * rest;
        double phase = share * time;
        double ramp = ramp(speed, phase);
        if (!(ramp >= -ROUNDING * phase && ramp <= phase / 2 * (1 + ROUNDING))) {
            data.clash(
                    acceleration != null ? "acceleration" : "jerk",
                    data.speed(speed) + " cannot be reached in " + MoveData.time(phase) + " with it",
                    acceleration != null
                            ? "from " + data.acceleration(speed / phase) + " to " + data.acceleration(2 * speed / phase)
                            : "at least " + data.jerk(4 * speed / (phase * phase)));
            return null;
        }
        double within = Math.max(0, Math.min(ramp, phase / 2));
        return new ShapedMove(law(share, within, phase), distance, time);
    }

    private static NormalisedLaw law(double share, double ramp, double phase) {
        double bounded = Math.min(0.5, share);
        return ramp == 0
                ? NormalisedLaw.trapezoidal(bounded, bounded)
                : NormalisedLaw.sCurve(bounded, Math.min(1, 2 * ramp / phase));
    }

    private double ramp(double speed, double phase) {
        if (jerkShare != null) {
            return jerkShare * phase / 2;
        }
        return acceleration != null
                ? phase - speed / acceleration
                : 2 * speed / known(data.jerk()) / (phase + Math.sqrt(phase * phase - 4 * speed / known(data.jerk())));
    }

    /** b = 1 − S/(v·t), above 0 and at most 1/2. */
    private @Nullable Double shareOfFrame() {
        double least = known(data.distance()) / known(data.duration());
        double speed = known(data.topSpeed());
        if (speed <= least || speed > 2 * least * (1 + ROUNDING)) {
            data.clash(
                    "topSpeed",
                    data.distance(known(data.distance())) + " in " + MoveData.time(known(data.duration()))
                            + " with a top speed of " + data.speed(speed),
                    "a top speed above " + data.speed(least) + " and at most " + data.speed(2 * least));
            return null;
        }
        return 1 - least / speed;
    }

    /** The shape of the phase is known; how long it lasts depends on the top speed. */
    private @Nullable ShapedMove byPhase() {
        if (MoveData.count(jerkShare, acceleration, data.jerk()) < 2) {
            return tooLittle();
        }
        Double distance = data.distance();
        Double duration = data.duration();
        Double topSpeed = data.topSpeed();
        if (duration == null) {
            double limit = known(topSpeed);
            double length = known(distance);
            if (limit * phase(limit) <= length * (1 + ROUNDING)) {
                return finished(limit, length / limit + phase(limit), false);
            }
            double peak = root(v -> v * phase(v) - length, limit);
            return finished(peak, 2 * phase(peak), true);
        }
        if (topSpeed == null) {
            double length = known(distance);
            double highest = highest(duration);
            if (highest * (duration - phase(highest)) < length * (1 - ROUNDING)) {
                data.clash(
                        "duration",
                        data.distance(length) + " cannot be covered in " + MoveData.time(duration)
                                + " with this acceleration and jerk",
                        "a longer duration, a shorter distance, or a higher acceleration or jerk");
                return null;
            }
            return finished(root(v -> v * (duration - phase(v)) - length, highest), duration, false);
        }
        if (2 * phase(topSpeed) > duration * (1 + ROUNDING)) {
            data.clash(
                    "duration",
                    "the phases to and from " + data.speed(topSpeed) + " take " + MoveData.time(2 * phase(topSpeed))
                            + " of a move that lasts " + MoveData.time(duration),
                    "at least " + MoveData.time(2 * phase(topSpeed)));
            return null;
        }
        return finished(topSpeed, duration, false);
    }

    private ShapedMove finished(double speed, double duration, boolean below) {
        double phase = phase(speed);
        double distance = speed * (duration - phase);
        boolean slow = jerkShare == null && reachedAcceleration(speed) < known(acceleration) * (1 - ROUNDING);
        return new ShapedMove(law(phase / duration, phaseRamp(speed), phase), distance, duration, below, slow);
    }

    /** The time of an acceleration phase up to a speed. */
    private double phase(double speed) {
        if (jerkShare == null) {
            double reached = reachedAcceleration(speed);
            return speed / reached + reached / known(data.jerk());
        }
        return acceleration != null
                ? speed / (acceleration * (1 - jerkShare / 2))
                : Math.sqrt(2 * speed / (known(data.jerk()) * jerkShare * (1 - jerkShare / 2)));
    }

    private double phaseRamp(double speed) {
        return jerkShare == null ? reachedAcceleration(speed) / known(data.jerk()) : jerkShare * phase(speed) / 2;
    }

    /** A speed below a²/j is reached before the acceleration is. */
    private double reachedAcceleration(double speed) {
        return Math.min(known(acceleration), Math.sqrt(speed * known(data.jerk())));
    }

    /** The speed at which both phases fill the duration. */
    private double highest(double duration) {
        double bound = 1;
        while (2 * phase(bound) < duration) {
            bound *= 2;
        }
        return root(v -> 2 * phase(v) - duration, bound);
    }

    /** Where a function that rises from below 0 passes 0; by bisection to the last bit. */
    private static double root(DoubleUnaryOperator rising, double bound) {
        double below = 0;
        double above = bound;
        while (true) {
            double middle = (below + above) / 2;
            if (middle <= below || middle >= above) {
                return above;
            }
            if (rising.applyAsDouble(middle) < 0) {
                below = middle;
            } else {
                above = middle;
            }
        }
    }

    private static double known(@Nullable Double value) {
        return Objects.requireNonNull(value);
    }
}
