package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.duty.CoastLoad;
import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A stop by power-off, from any instant of the cycle.
 *
 * <p>Two stops under one load never overtake each other: the faster stays the faster, signs counted. So between two speeds no
 * stop runs farther forward than the upper nor farther back than the lower; and its time, its fall and the energy of its brake
 * are worst at one of the two ends, for each of them only falls or only rises with the speed that is left when the brake bites;
 * so is the torque on its gear unit.
 */
final class UncontrolledStop implements Stopping {

    private final StoppingAxis axis;
    private final BrakeAction brake;

    UncontrolledStop(StoppingAxis axis) {
        this.axis = axis;
        this.brake = BrakeAction.of(axis.brake());
    }

    @Override
    public double path(Coasting.Piece piece, double speed) {
        return runs(piece, speed).mapToDouble(CoastRun::path).max().orElse(0);
    }

    @Override
    public double bound(Coasting.Piece piece, double low, double high) {
        if (piece.held()) {
            return 0;
        }
        return piece.loads().stream()
                .mapToDouble(load -> CoastRun.of(load, high, brake).forward()
                        + CoastRun.of(load, low, brake).backward())
                .max()
                .orElse(0);
    }

    private Stream<CoastRun> runs(Coasting.Piece piece, double speed) {
        return piece.held() ? Stream.of(CoastRun.HELD) : piece.loads().stream().map(load -> run(load, speed));
    }

    private CoastRun run(CoastLoad load, double speed) {
        return CoastRun.of(load, speed, brake);
    }

    /** The worst stop, the axis running on for a reaction time in s first. */
    WorstStops worst(double reaction) {
        SpeedCourse course = SpeedCourse.of(axis.coasting());
        var worst = new Search();
        for (SpeedCourse.Stretch stretch : course.stretches()) {
            worst.note(stretch, stretch.from());
            worst.note(stretch, stretch.to());
        }
        if (!worst.rests) {
            return new WorstStops(AxisStopping.unknown(axis.id()), null);
        }
        FarthestStop farthest = FarthestStop.of(course, reaction, this);
        var load = new LoadSide(axis.coasting());
        var stopping = new AxisStopping(
                axis.id(),
                new Time(reaction + worst.time),
                load.displacement(farthest.angle()),
                load.displacement(farthest.bound()),
                new Time(farthest.instant()),
                axis.coasting().gravity() ? load.displacement(worst.fall) : null,
                axis.brake() == null ? null : new Energy(worst.braked * brake.torque()),
                axis.brake() == null || axis.gearStopTorque() == null ? null : new Torque(worst.geared));
        return new WorstStops(
                stopping, worst.longest == null ? null : worst.starts(worst.longest, start(course, farthest)));
    }

    private WorstStops.Start start(SpeedCourse course, FarthestStop farthest) {
        SpeedCourse.Stretch stretch = course.at(farthest.beside());
        double speed = stretch.speed(farthest.instant());
        CoastLoad load = stretch.piece().loads().stream()
                .max(Comparator.comparingDouble(one -> run(one, speed).path()))
                .orElseThrow();
        return new WorstStops.Start(load, speed);
    }

    private final class Search {
        private WorstStops.@Nullable Start longest;
        private WorstStops.@Nullable Start hottest;
        private WorstStops.@Nullable GearStart hardest;
        private boolean rests = true;
        private double time;
        private double fall;
        private double braked;
        private double geared;

        void note(SpeedCourse.Stretch stretch, double instant) {
            boolean upwards = stretch.piece().bare().weight() < 0;
            for (CoastLoad load : stretch.piece().held()
                    ? List.<CoastLoad>of()
                    : stretch.piece().loads()) {
                CoastRun run = run(load, stretch.speed(instant));
                rests &= run.rests();
                if (run.time() > time) {
                    time = run.time();
                    longest = new WorstStops.Start(load, stretch.speed(instant));
                }
                double down = upwards ? run.forward() : run.backward();
                fall = Math.max(fall, axis.coasting().even() ? down : run.path());
                if (run.braked() > braked) {
                    braked = run.braked();
                    hottest = new WorstStops.Start(load, stretch.speed(instant));
                }
                noteGear(load, run.biting());
            }
        }

        /**
         * The torque a closing brake brings on the gear unit. It changes one way only with the speed, for dM/dw = J_motor/J·k·i:
         * no torque on the way to rest is above both that at the bite and that just before the rest.
         */
        private void noteGear(CoastLoad load, double biting) {
            HoldingBrake closing = axis.brake();
            if (closing == null || axis.gearStopTorque() == null || biting == 0) {
                return;
            }
            var braking = new Freewheel(load, Math.signum(biting), BrakeAction.fullTorque(closing));
            for (double speed : new double[] {biting, 0}) {
                double torque = braking.outputTorque(speed);
                if (torque > geared) {
                    geared = torque;
                    hardest = new WorstStops.GearStart(braking, speed);
                }
            }
        }

        private WorstStops.Starts starts(WorstStops.Start slowest, WorstStops.Start farthest) {
            return new WorstStops.Starts(slowest, farthest, hottest, hardest);
        }
    }
}
