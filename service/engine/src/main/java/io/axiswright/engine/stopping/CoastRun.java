package io.axiswright.engine.stopping;

import io.axiswright.engine.duty.CoastLoad;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One uncontrolled stop, from power-off to rest, at the motor shaft: coasting, then braking, from event to event.
 *
 * @param rests whether it comes to rest at all; if not, the rest tells how far it was followed
 * @param time from power-off to rest, s
 * @param forward angle turned in the positive direction, rad
 * @param backward angle turned in the negative direction, as a magnitude, rad
 * @param braked angle turned against the brake, rad
 * @param biting speed of the shaft when the brake bites, rad/s; 0 if it rests by then
 */
record CoastRun(boolean rests, double time, double forward, double backward, double braked, double biting) {

    /** An axis that stands and is held. */
    static final CoastRun HELD = new CoastRun(true, 0, 0, 0, 0, 0);

    /** An acceleration below this share of what each torque alone would give is rounding. */
    private static final double BALANCED = 1e-12;

    /**
     * Follows a stop.
     *
     * @param load what it coasts under
     * @param speed speed of the motor shaft at power-off, rad/s
     * @param brake its brake
     */
    static CoastRun of(CoastLoad load, double speed, BrakeAction brake) {
        return new Course(load, brake, speed, null).run();
    }

    /** The same stop, event by event. */
    static List<CoastPhase> phases(CoastLoad load, double speed, BrakeAction brake) {
        List<CoastPhase> phases = new ArrayList<>();
        new Course(load, brake, speed, phases).run();
        return phases;
    }

    /** The whole angle, there and back, rad. */
    double path() {
        return forward + backward;
    }

    private static final class Course {

        private final CoastLoad load;
        private final BrakeAction brake;
        private final @Nullable List<CoastPhase> log;
        private double speed;
        private double time;
        private double forward;
        private double backward;
        private double braked;

        Course(CoastLoad load, BrakeAction brake, double speed, @Nullable List<CoastPhase> log) {
            this.log = log;
            this.load = load;
            this.brake = brake;
            this.speed = speed;
        }

        CoastRun run() {
            if (follow(0, brake.delay())) {
                return new CoastRun(true, time, forward, backward, braked, 0);
            }
            double biting = time < brake.delay() ? 0 : speed;
            boolean rests = follow(brake.torque(), Double.POSITIVE_INFINITY);
            return new CoastRun(rests, time, forward, backward, braked, biting);
        }

        /** Follows the motion under a brake torque until an instant; whether it has come to rest by then. */
        private boolean follow(double torque, double until) {
            while (time < until) {
                double direction = speed == 0 ? driven(torque) : Math.signum(speed);
                if (direction == 0) {
                    return true;
                }
                Glide glide = new Freewheel(load, direction, torque).from(speed);
                if (!glide(glide, torque, until)) {
                    return false;
                }
            }
            return false;
        }

        /** Until the axis rests, or the time is over, or neither ever happens. */
        private boolean glide(Glide first, double torque, double until) {
            Glide glide = first;
            while (true) {
                double rest = glide.rest();
                double step = Math.min(Math.min(rest, glide.turning()), until - time);
                if (Double.isInfinite(step)) {
                    return false;
                }
                double angle = glide.angleAt(step);
                forward += Math.max(0, angle);
                backward += Math.max(0, -angle);
                braked += torque > 0 ? Math.abs(angle) : 0;
                speed = step == rest ? 0 : glide.speedAt(step);
                if (log != null && step > 0) {
                    log.add(CoastPhase.of(glide, torque, step, speed));
                }
                if (step == until - time) {
                    time = until;
                    return true;
                }
                time += step;
                if (step == rest) {
                    return true;
                }
                glide = glide.onwards().apply(speed);
            }
        }

        /** The direction in which an axis at rest begins to move; 0 if friction or the brake holds it. */
        private double driven(double torque) {
            double direction = -Math.signum(load.weight());
            if (direction == 0) {
                return 0;
            }
            double acceleration = new Freewheel(load, direction, torque).from(0).acceleration();
            return acceleration * direction > BALANCED * Math.abs(load.weight()) / load.motorInertia() ? direction : 0;
        }
    }
}
