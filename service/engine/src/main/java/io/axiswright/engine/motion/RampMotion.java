package io.axiswright.engine.motion;

import io.axiswright.engine.design.Jog;
import io.axiswright.engine.design.Leg;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Acceleration;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Motions at constant speed and changes between speeds. */
final class RampMotion {

    private final String pointer;
    private final List<Fault> faults;

    RampMotion(String pointer, List<Fault> faults) {
        this.pointer = pointer;
        this.faults = faults;
    }

    @Nullable
    Motion of(Run run) {
        double speed = run.speed().si();
        Double time = moving(speed) ? time(speed, speed, new Leg(run.duration(), run.distance(), null), 0, "") : null;
        return time == null ? null : Motion.of(List.of(stretch(0, time, Polynomial.of(speed))));
    }

    @Nullable
    Motion of(Ramp ramp) {
        double from = si(ramp.startSpeed());
        double to = si(ramp.endSpeed());
        double jerkShare = ramp.jerkShare() == null ? 0 : ramp.jerkShare();
        Double time = time(from, to, new Leg(ramp.duration(), ramp.distance(), ramp.acceleration()), jerkShare, "");
        return time == null ? null : Motion.of(ramp(0, time, from, to, jerkShare));
    }

    @Nullable
    Motion of(Jog jog) {
        double speed = jog.speed().si();
        if (!moving(speed)) {
            return null;
        }
        Double starting = time(0, speed, jog.starting(), 0, "/starting");
        Double running = time(speed, speed, jog.running(), 0, "/running");
        Double stopping = time(speed, 0, jog.stopping(), 0, "/stopping");
        if (starting == null || running == null || stopping == null) {
            return null;
        }
        List<Motion.Stretch> stretches = new ArrayList<>(ramp(0, starting, 0, speed, 0));
        stretches.add(stretch(starting, running, Polynomial.of(speed)));
        stretches.addAll(ramp(starting + running, stopping, speed, 0, 0));
        return Motion.of(stretches);
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }

    private boolean moving(double speed) {
        if (speed == 0) {
            fault("/speed", FaultCode.OUT_OF_RANGE, "the speed is 0", "a speed other than 0, or a dwell");
        }
        return speed != 0;
    }

    /**
     * How long a change of speed takes: stated, or by its distance (v1 + v2)/2·t, or by its acceleration
     * |v2 − v1|/(t·(1 − s/2)).
     */
    private @Nullable Double time(double from, double to, Leg leg, double jerkShare, String member) {
        Time duration = leg.duration();
        Displacement distance = leg.distance();
        Acceleration acceleration = leg.acceleration();
        boolean steady = from == to;
        int stated = (duration == null ? 0 : 1) + (distance == null ? 0 : 1) + (acceleration == null ? 0 : 1);
        String accepted = steady ? "either duration or distance" : "one of duration, distance and acceleration";
        if (stated == 0) {
            fault(member, FaultCode.MISSING, "nothing says how long it goes on", accepted);
            return null;
        }
        if (stated > 1 || steady && acceleration != null) {
            fault(member, FaultCode.INCONSISTENT, "more is stated than fixes it", accepted);
            return null;
        }
        if (duration != null) {
            return duration.si();
        }
        double time = distance != null
                ? 2 * distance.si() / (from + to)
                : Math.abs(to - from) / (si(acceleration) * (1 - jerkShare / 2));
        if (!(time > 0 && time < Double.POSITIVE_INFINITY)) {
            fault(
                    member + "/distance",
                    FaultCode.INCONSISTENT,
                    "the distance does not lie the way the mean speed goes",
                    "a distance other than 0 with the sign of the mean speed");
            return null;
        }
        return time;
    }

    /** An even ramp, or one whose acceleration builds up and dies down over half the jerk share of its time each. */
    private static List<Motion.Stretch> ramp(double start, double time, double from, double to, double jerkShare) {
        if (jerkShare == 0) {
            return List.of(stretch(start, time, Polynomial.of(from, (to - from) / time)));
        }
        double ramp = time * jerkShare / 2;
        double peak = (to - from) / (time - ramp);
        List<Motion.Stretch> stretches = new ArrayList<>();
        stretches.add(stretch(start, ramp, Polynomial.of(from, 0, peak / ramp / 2)));
        double built = from + peak * ramp / 2;
        double steady = time - 2 * ramp;
        if (jerkShare < 1) {
            stretches.add(stretch(start + ramp, steady, Polynomial.of(built, peak)));
        }
        stretches.add(
                stretch(start + ramp + steady, ramp, Polynomial.of(built + peak * steady, peak, -peak / ramp / 2)));
        return stretches;
    }

    private static Motion.Stretch stretch(double start, double length, Polynomial speed) {
        return new Motion.Stretch(start, length, speed, 0, null);
    }

    private void fault(String member, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer + member, code, detail, accepted));
    }
}
