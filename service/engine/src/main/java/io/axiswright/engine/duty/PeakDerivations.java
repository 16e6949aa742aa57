package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.SequencedMap;
import java.util.function.ToDoubleBiFunction;

/** How the greatest torque and power of an axis came about: what asks for them at their instant. */
final class PeakDerivations {

    private static final String BALANCE =
            "balance of torques at the shaft (Dubey, Fundamentals of Electrical Drives, ch. 2)";

    private final String axis;
    private final AxisLoad load;
    private final double inertia;
    private final List<Derivation> derivations = new ArrayList<>();

    private PeakDerivations(String axis, AxisLoad load, double inertia) {
        this.axis = axis;
        this.load = load;
        this.inertia = inertia;
    }

    /**
     * Of one axis.
     *
     * @param inertia inertia of the motor and what turns with it, kg·m²
     */
    static List<Derivation> of(String axis, AxisLoad load, double inertia, DutyFigures figures) {
        var all = new PeakDerivations(axis, load, inertia);
        all.torque(figures.peakTorqueAt().si(), figures.peakTorque());
        all.power(figures.peakMotoringPowerAt().si(), figures.peakMotoringPower());
        all.holding(figures.holdingTorque());
        return all.derivations;
    }

    private void torque(double at, Torque result) {
        LoadPiece piece = mostAt(at, (one, time) -> Math.abs(one.torque(inertia).at(time)));
        double t = at - piece.start();
        add(
                "T_peak",
                "T_peak = |T_load + J·alpha|, J of all that turns with the motor",
                inputs(
                        "t", new Time(at),
                        "T_load", new Torque(piece.torque().at(t)),
                        "J", new Inertia(inertia),
                        "alpha", new AngularAcceleration(piece.acceleration().at(t))),
                result);
        if (piece.effort() instanceof EvenEffort even && piece.speed().degree() > 0) {
            double position = piece.position().at(t);
            double speed = piece.position().derivative().at(t);
            double acceleration = piece.position().derivative().derivative().at(t);
            double direction = Math.signum(piece.speed().at(piece.duration() / 2));
            add(
                    "T_pull",
                    "T_pull = T_inertia + T_weight + T_friction + T_process at the mechanism's shaft at that instant, before losses",
                    inputs(
                            "T_inertia", new Torque(even.mass() * acceleration * even.travel()),
                            "T_weight", new Torque((even.gravity() + even.rise() * position) * even.travel()),
                            "T_friction",
                                    new Torque((direction * even.coulomb() + even.viscous() * speed) * even.travel()),
                            "T_process", new Torque(even.process() * even.travel())),
                    new Torque(piece.pull().at(t)));
        }
    }

    private void power(double at, Power result) {
        LoadPiece piece = mostAt(
                at, (one, time) -> one.torque(inertia).at(time) * one.speed().at(time));
        double t = at - piece.start();
        add(
                "P_peak",
                "P_peak = T·w",
                inputs(
                        "t", new Time(at),
                        "T", new Torque(piece.torque(inertia).at(t)),
                        "w", new AngularSpeed(piece.speed().at(t))),
                result);
    }

    private void holding(Torque result) {
        add(
                "T_hold",
                "T_hold = T_shaft/i, the greatest pull at the mechanism's shaft wherever the load comes, no friction counted on",
                inputs(
                        "T_shaft", new Torque(load.reach().holding()),
                        "i", new Ratio(load.drivetrain().ratio())),
                result);
    }

    /** Of the pieces that meet at an instant, s, the one with the most of something over its own time. */
    private LoadPiece mostAt(double at, ToDoubleBiFunction<LoadPiece, Double> size) {
        LoadPiece largest = load.pieces().getFirst();
        double most = Double.NEGATIVE_INFINITY;
        for (LoadPiece piece : load.pieces()) {
            if (piece.start() <= at && at <= piece.end()) {
                double here = size.applyAsDouble(piece, at - piece.start());
                largest = here > most ? piece : largest;
                most = Math.max(most, here);
            }
        }
        return largest;
    }

    private void add(String symbol, String formula, SequencedMap<String, Quantity> inputs, Quantity result) {
        derivations.add(new Derivation(axis, symbol, formula, inputs, BALANCE, result));
    }
}
