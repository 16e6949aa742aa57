package io.axiswright.engine.motion;

import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.ModifiedSine;
import io.axiswright.engine.design.ModifiedTrapezoid;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.Polynomial4567;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.SimpleHarmonic;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Moves from rest to rest: the course they state, and what in them does not agree. */
final class MoveMotion {

    /** Data typed in decimals agree with each other to this share. */
    private static final double ROUNDING = 1e-6;

    private MoveMotion() {}

    static @Nullable Motion of(Move move, String pointer, List<Fault> faults) {
        MoveData data = MoveData.of(move, pointer, faults);
        if (!sensible(move, data)) {
            return null;
        }
        if (move.distance() != null && move.distance().si() == 0) {
            return standstill(data);
        }
        ShapedMove shaped = shaped(move.law(), data);
        if (shaped == null || !agrees(shaped, data)) {
            return null;
        }
        double direction = move.distance() != null
                ? Math.signum(move.distance().si())
                : move.topSpeed() != null ? Math.signum(move.topSpeed().si()) : 1;
        return motion(shaped, direction);
    }

    private static @Nullable Motion standstill(MoveData data) {
        if (data.duration() == null) {
            data.missing("a duration, as the distance is 0");
            return null;
        }
        return Motion.rest(data.duration());
    }

    private static boolean sensible(Move move, MoveData data) {
        int before = data.faults().size();
        if (data.topSpeed() != null && data.topSpeed() == 0) {
            data.impossible("topSpeed", "the top speed of a move is 0", "a speed other than 0, or a dwell");
        }
        if (move.distance() != null
                && move.topSpeed() != null
                && move.topSpeed().si() < 0
                && move.distance().si() >= 0) {
            data.clash(
                    "topSpeed",
                    "the distance goes one way and the top speed the other",
                    "a top speed with the sign of the distance, or without one");
        }
        return data.faults().size() == before;
    }

    /** The one place that knows every law. */
    private static @Nullable ShapedMove shaped(MotionLaw law, MoveData data) {
        return switch (law) {
            case Trapezoidal trapezoid -> TrapezoidSolver.solve(trapezoid, data);
            case Triangular triangle -> ShapedMove.of(NormalisedLaw.trapezoidal(0.5, 0.5), data);
            case SCurve curve -> SCurveSolver.solve(curve, data);
            case SimpleHarmonic harmonic -> ShapedMove.of(NormalisedLaw.SIMPLE_HARMONIC, data);
            case Cycloidal cycloidal -> ShapedMove.of(NormalisedLaw.CYCLOIDAL, data);
            case Polynomial345 polynomial -> ShapedMove.of(NormalisedLaw.POLYNOMIAL_345, data);
            case Polynomial4567 polynomial -> ShapedMove.of(NormalisedLaw.POLYNOMIAL_4567, data);
            case ModifiedTrapezoid modified -> ShapedMove.of(NormalisedLaw.MODIFIED_TRAPEZOID, data);
            case ModifiedSine modified -> ShapedMove.of(NormalisedLaw.MODIFIED_SINE, data);
        };
    }

    /** Whether everything stated is what the course comes to. */
    private static boolean agrees(ShapedMove shaped, MoveData data) {
        int before = data.faults().size();
        double distance = shaped.distance();
        double time = shaped.duration();
        NormalisedLaw law = shaped.law();
        check(data, "distance", data.distance(), distance, data::distance);
        check(data, "duration", data.duration(), time, MoveData::time);
        if (!shaped.belowTopSpeed()) {
            check(data, "topSpeed", data.topSpeed(), law.topSpeed() * distance / time, data::speed);
        }
        double perSquare = distance / (time * time);
        if (!shaped.belowAcceleration()) {
            check(data, "acceleration", data.acceleration(), law.acceleration() * perSquare, data::acceleration);
            check(data, "deceleration", data.deceleration(), law.deceleration() * perSquare, data::acceleration);
        }
        double jerk = law.jerk();
        if (data.jerk() != null && Double.isInfinite(jerk)) {
            data.impossible(
                    "jerk", "the acceleration of this law jumps, so no jerk limits it", "no jerk, or another law");
        } else {
            check(data, "jerk", data.jerk(), jerk * perSquare / time, data::jerk);
        }
        return data.faults().size() == before;
    }

    private interface Words {
        String of(double value);
    }

    private static void check(MoveData data, String member, @Nullable Double stated, double actual, Words words) {
        if (stated != null && Math.abs(stated - actual) > ROUNDING * actual) {
            data.clash(
                    member,
                    words.of(stated) + " is stated, but the other data of the move give " + words.of(actual),
                    words.of(actual) + ", or one of the data less");
        }
    }

    private static Motion motion(ShapedMove shaped, double direction) {
        double time = shaped.duration();
        double scale = direction * shaped.distance() / time;
        List<Motion.Stretch> stretches = new ArrayList<>();
        for (NormalisedLaw.Stretch stretch : shaped.law().stretches()) {
            Polynomial speed = stretch.speed().times(scale).stretched(time);
            stretches.add(new Motion.Stretch(
                    stretch.start() * time, stretch.length() * time, speed, (int) Math.signum(scale), null));
        }
        return new Motion(
                stretches, time, direction * shaped.distance(), shaped.distance(), 0, 0, shaped.belowTopSpeed());
    }
}
