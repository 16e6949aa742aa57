package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Polynomial;
import java.util.Arrays;
import java.util.List;

/**
 * A torque–speed curve: straight between its points, level below the first and beyond the last. That no motor runs beyond it is
 * a limit of its own, of speed ({@link #topSpeed}), so that a speed just too high does not count as no torque at all. Speeds in
 * rad/s and not negative, torques in N·m.
 */
final class TorqueCurve {

    private final double[] speeds;
    private final double[] torques;
    private final Enlargement enlargement;

    private TorqueCurve(double[] speeds, double[] torques) {
        this.speeds = speeds;
        this.torques = torques;
        enlargement = new Enlargement(speeds, torques);
    }

    /** The curve of a catalogue with all its speeds times a factor. */
    static TorqueCurve of(List<CurvePoint> points, double speedFactor) {
        return of(points, speedFactor, 1);
    }

    /** The curve of a catalogue with all its speeds and torques times a factor each. */
    static TorqueCurve of(List<CurvePoint> points, double speedFactor, double torqueFactor) {
        return new TorqueCurve(
                points.stream().mapToDouble(p -> p.speed().si() * speedFactor).toArray(),
                points.stream().mapToDouble(p -> p.torque().si() * torqueFactor).toArray());
    }

    /** The highest speed, rad/s. */
    double topSpeed() {
        return speeds[speeds.length - 1];
    }

    /** The torque available at a speed. */
    double at(double speed) {
        int line = lineAt(speed);
        if (line < 0) {
            return torques[0];
        }
        return line >= speeds.length - 1
                ? torques[speeds.length - 1]
                : torques[line] + slope(line) * (speed - speeds[line]);
    }

    /** The least torque available between two speeds. */
    double lowest(double from, double to) {
        double least = Math.min(at(from), at(to));
        for (int k = 0; k < speeds.length; k++) {
            if (speeds[k] > from && speeds[k] < to) {
                least = Math.min(least, torques[k]);
            }
        }
        return least;
    }

    /** The torque available over a range of speeds, none negative. */
    Enclosure over(Enclosure speed) {
        double least = lowest(speed.low(), speed.high());
        double most = Math.max(at(speed.low()), at(speed.high()));
        double flattest = Double.POSITIVE_INFINITY;
        double steepest = Double.NEGATIVE_INFINITY;
        int last = lineAt(speed.high());
        for (int line = lineAt(speed.low()); line <= last; line++) {
            double slope = line < 0 || line >= speeds.length - 1 ? 0 : slope(line);
            flattest = Math.min(flattest, slope);
            steepest = Math.max(steepest, slope);
            if (line >= 0) {
                most = Math.max(most, speeds[line] >= speed.low() ? torques[line] : 0);
            }
        }
        return speed.through(least, most, flattest, steepest);
    }

    /** The speeds strictly between two others at which the curve has a corner. */
    double[] corners(double from, double to) {
        return Arrays.stream(speeds).filter(s -> s > from && s < to).toArray();
    }

    /** The torque available along a course of speed that stays on the line on which one of its speeds lies. */
    Polynomial along(Polynomial speed, double speedOnLine) {
        int line = lineAt(speedOnLine);
        if (line < 0) {
            return Polynomial.of(torques[0]);
        }
        if (line >= speeds.length - 1) {
            return Polynomial.of(torques[line]);
        }
        return speed.times(slope(line)).plus(torques[line] - slope(line) * speeds[line]);
    }

    /** The highest power on the curve with a loss that goes with the square of torque, W. */
    double highestPower(double lossPerTorqueSquared) {
        double highest = 0;
        for (int k = 0; k < speeds.length; k++) {
            highest = Math.max(highest, torques[k] * speeds[k] + lossPerTorqueSquared * torques[k] * torques[k]);
        }
        return highest;
    }

    /** How many times larger it would have to be. */
    Enlargement enlargement() {
        return enlargement;
    }

    private double slope(int line) {
        return (torques[line + 1] - torques[line]) / (speeds[line + 1] - speeds[line]);
    }

    /** The number of the point at which the line begins; −1 below the first point. */
    private int lineAt(double speed) {
        int line = speeds.length - 1;
        while (line >= 0 && speeds[line] > speed) {
            line--;
        }
        return line;
    }
}
