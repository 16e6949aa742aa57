package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;

/** Goes through a course piece by piece and adds up its figures, each an exact integral or an exact extreme. */
final class CourseFigures {

    /** Torques below this share of the peak are rounding. */
    private static final double LEAST_TORQUE = 1e-9;

    /** A peak power below this share of the other is rounding. */
    private static final double LEAST_POWER = 1e-12;

    private final Course course;
    private final double period;
    private double peakTorque;
    private double peakTorqueAt;
    private double highestTorque;
    private double lowestTorque;
    private double torqueSquared;
    private double turned;
    private double peakMotoring;
    private double peakMotoringAt;
    private double peakReturned;
    private double peakReturnedAt;
    private double motored;
    private double returned;
    private final List<PowerStretch> stretches = new ArrayList<>();

    CourseFigures(Course course) {
        this.course = course;
        period = course.duration();
        course.pieces().forEach(this::add);
    }

    /** Whether the torque changes its sign. */
    boolean reversing() {
        double least = LEAST_TORQUE * peakTorque;
        return highestTorque > least && lowestTorque < -least;
    }

    /** The greatest magnitude of torque, N·m. */
    double peakTorque() {
        return peakTorque;
    }

    Course course() {
        return course;
    }

    /** The stretches of the course in which power flows, in order. */
    List<PowerStretch> stretches() {
        return stretches;
    }

    /** A peak that is nothing beside the other is the rounding at the end of a motion. */
    private static boolean real(double peak, double other) {
        return peak > LEAST_POWER * other;
    }

    /** The figures; those that are the same for every drive unit come from the load. */
    DutyFigures figures(AxisLoad load, LoadSums sums) {
        boolean motoring = real(peakMotoring, peakReturned);
        boolean returning = real(peakReturned, peakMotoring);
        return new DutyFigures(
                new Time(period),
                new Torque(peakTorque),
                new Time(peakTorqueAt),
                new Torque(Math.sqrt(torqueSquared / period)),
                new AngularSpeed(turned / period),
                new AngularSpeed(sums.rmsSpeed()),
                new AngularSpeed(sums.peakSpeed()),
                new Time(sums.peakSpeedAt()),
                new Power(motoring ? peakMotoring : 0),
                new Time(motoring ? peakMotoringAt : 0),
                new Power(returning ? peakReturned : 0),
                new Time(returning ? peakReturnedAt : 0),
                new Power((motored - returned) / period),
                new Energy(motored),
                new Energy(returned),
                new Torque(load.holdingTorque()));
    }

    private void add(Course.Piece piece) {
        double end = piece.duration();
        torqueSquared += piece.torque().times(piece.torque()).integral(0, end);
        turned += Math.abs(piece.speed().integral(0, end));
        for (double t : piece.torque().extremalPoints(0, end)) {
            double torque = piece.torque().at(t);
            highestTorque = Math.max(highestTorque, torque);
            lowestTorque = Math.min(lowestTorque, torque);
            if (Math.abs(torque) > peakTorque) {
                peakTorque = Math.abs(torque);
                peakTorqueAt = piece.start() + t;
            }
        }
        addPower(piece, piece.torque().times(piece.speed()));
    }

    private void addPower(Course.Piece piece, Polynomial power) {
        double end = piece.duration();
        for (double t : power.extremalPoints(0, end)) {
            double value = power.at(t);
            if (value > peakMotoring) {
                peakMotoring = value;
                peakMotoringAt = piece.start() + t;
            } else if (-value > peakReturned) {
                peakReturned = -value;
                peakReturnedAt = piece.start() + t;
            }
        }
        Polynomial energy = power.antiderivative();
        double left = 0;
        for (double change : power.signChanges(0, end)) {
            addEnergy(piece.start() + left, piece.start() + change, energy.at(change) - energy.at(left));
            left = change;
        }
        addEnergy(piece.start() + left, piece.end(), energy.at(end) - energy.at(left));
    }

    private void addEnergy(double from, double to, double energy) {
        if (energy >= 0) {
            motored += energy;
        } else {
            returned -= energy;
        }
        var stretch = new PowerStretch(from, to, energy);
        if (!stretches.isEmpty() && stretches.getLast().goesOnIn(stretch)) {
            stretches.add(stretches.removeLast().with(stretch));
        } else if (energy != 0) {
            stretches.add(stretch);
        }
    }
}
