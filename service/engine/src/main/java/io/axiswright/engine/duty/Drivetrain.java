package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The way from the load to the motor shaft: mechanism, its shaft, gear; what turns with the motor comes last and has no
 * efficiency.
 *
 * @param mechanics the mechanism
 * @param ratio motor turns per turn of the mechanism's shaft
 * @param gear efficiency of the gear
 * @param gearInertia inertia of the gear at the motor shaft, kg·m²
 * @param couplingInertia inertia of the coupling at the motor shaft, kg·m²
 */
record Drivetrain(Mechanics mechanics, double ratio, Efficiency gear, double gearInertia, double couplingInertia) {

    /** Pieces shorter than this share of a motion are rounding. */
    private static final double SLIVER = 1e-10;

    static Drivetrain of(Axis axis) {
        Mechanics mechanics = Mechanics.of(axis.mechanism());
        double coupling =
                axis.couplingInertia() == null ? 0 : axis.couplingInertia().si();
        Gear gear = axis.gear();
        return gear == null
                ? new Drivetrain(mechanics, 1, Efficiency.LOSSLESS, 0, coupling)
                : new Drivetrain(
                        mechanics,
                        gear.ratio(),
                        Efficiency.of(gear.efficiency(), gear.backDrivingEfficiency()),
                        gear.inertia().si(),
                        coupling);
    }

    /** Motor radians per metre (or radian) of the load. */
    double motorTurn() {
        return ratio / mechanics.travel();
    }

    /** Inertia of load, mechanism and gear at the motor shaft, kg·m²; kinetic energy knows no efficiency. */
    double reflectedInertia(double mass) {
        double atShaft = mass * mechanics.travel() * mechanics.travel() + mechanics.shaftInertia();
        return atShaft / (ratio * ratio) + gearInertia;
    }

    /** Whether no load can drive the motor through it. */
    boolean selfLocking() {
        return mechanics.efficiency().selfLocking() || gear.selfLocking();
    }

    /** Torque at the motor shaft that holds an effort at rest, N·m; losses would help to hold but are not counted on. */
    double holdingTorque(double effort) {
        return effort / motorTurn();
    }

    /** The pieces of a standstill. */
    LoadPiece resting(LoadEffort effort, double start, double duration, boolean held) {
        double torque = held ? 0 : holdingTorque(effort.holding());
        return LoadPiece.of(start, duration, Polynomial.ZERO, Polynomial.ZERO, Polynomial.of(torque), effort);
    }

    /**
     * The pieces of a motion whose load speed is one polynomial that keeps its sign. The efficiency of each element goes
     * with the direction of power through it, so the motion is cut where that power changes sign: first at the mechanism,
     * then, once the inertia of its shaft is added, at the gear.
     *
     * @param effort the load
     * @param start when the motion starts, s
     * @param duration how long it lasts, s
     * @param speed load speed over the time since the start, m/s or rad/s
     * @param direction sign of the speed
     */
    List<LoadPiece> moving(LoadEffort effort, double start, double duration, Polynomial speed, double direction) {
        return passing(effort, effort.moving(speed, direction), start, duration, speed, direction);
    }

    /** The same for an effort at the load that is known over time, whatever the load behind it. */
    List<LoadPiece> passing(
            LoadEffort effort, Polynomial moving, double start, double duration, Polynomial speed, double direction) {
        Polynomial motorSpeed = speed.times(motorTurn());
        Polynomial acceleration = motorSpeed.derivative();
        Polynomial wanted = moving.times(mechanics.travel());
        Polynomial turning = acceleration.times(mechanics.shaftInertia() / ratio);
        List<LoadPiece> pieces = new ArrayList<>();
        double[] cuts = cuts(mechanics.efficiency(), wanted, 0, duration);
        for (int k = 1; k < cuts.length; k++) {
            boolean driving = wanted.at((cuts[k - 1] + cuts[k]) / 2) * direction >= 0;
            Polynomial shaft = mechanics.efficiency().passed(wanted, driving).plus(turning);
            double[] gearCuts = cuts(gear, shaft, cuts[k - 1], cuts[k]);
            for (int j = 1; j < gearCuts.length; j++) {
                double from = gearCuts[j - 1];
                double to = gearCuts[j];
                boolean gearDriving = shaft.at((from + to) / 2) * direction >= 0;
                Polynomial torque = gear.passed(shaft, gearDriving).times(1 / ratio);
                pieces.add(LoadPiece.of(
                        start + from,
                        to - from,
                        motorSpeed.shifted(from),
                        acceleration.shifted(from),
                        torque.shifted(from),
                        effort));
            }
        }
        return pieces;
    }

    /** Both ends and the sign changes between them that are not rounding at an end. */
    private static double[] cuts(Efficiency efficiency, Polynomial torque, double from, double to) {
        List<Double> changes = efficiency.lossless() ? List.of() : torque.signChanges(from, to);
        double least = SLIVER * to;
        return DoubleStream.concat(
                        DoubleStream.concat(
                                DoubleStream.of(from),
                                changes.stream().mapToDouble(t -> t).filter(t -> t > from + least && t < to - least)),
                        DoubleStream.of(to))
                .toArray();
    }
}
