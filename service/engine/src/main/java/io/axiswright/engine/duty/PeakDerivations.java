package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.TorqueCourse;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/** How the greatest torque and power of an axis came about: what asks for them at their instant. */
final class PeakDerivations {

    private final ShaftBalance balance;
    private final boolean stated;
    private final List<Derivation> derivations = new ArrayList<>();

    private PeakDerivations(Axis axis, AxisLoad load, double inertia) {
        balance = new ShaftBalance(axis.id(), load, inertia);
        stated = axis.cycle().segments().stream().anyMatch(TorqueCourse.class::isInstance);
    }

    /** Of one axis with its drive unit. */
    static List<Derivation> of(Axis axis, AxisLoad load, Trial trial, DutyFigures figures) {
        var all = new PeakDerivations(axis, load, trial.inertia());
        all.torque(figures.peakTorqueAt().si(), figures.peakTorque());
        all.power(figures.peakMotoringPowerAt().si(), figures.peakMotoringPower());
        all.holding(figures.holdingTorque());
        StopUse stop = trial.stopUse();
        if (stop != null) {
            Envelope worst = stop.worst();
            all.derivations.add(all.balance.stop("T_stop", stop.stop(), worst.instant(), new Torque(worst.torque())));
        }
        return all.derivations;
    }

    private void torque(double at, Torque result) {
        derivations.add(balance.torque("T_peak", at, result));
        LoadPiece piece = balance.hardestAt(at);
        if (piece.effort() instanceof EvenEffort even && piece.speed().degree() > 0 && !stated) {
            double t = at - piece.start();
            double direction = Math.signum(piece.speed().at(piece.duration() / 2));
            pull(piece, even, t, direction);
            passed(piece, t, direction);
        }
    }

    private void pull(LoadPiece piece, EvenEffort even, double t, double direction) {
        double position = piece.position().at(t);
        double speed = piece.position().derivative().at(t);
        double acceleration = piece.position().derivative().derivative().at(t);
        add(
                "T_pull",
                "T_pull = T_inertia + T_weight + T_friction + T_process; at the mechanism's shaft at that instant, before losses",
                inputs(
                        "T_inertia", new Torque(even.mass() * acceleration * even.travel()),
                        "T_weight", new Torque((even.gravity() + even.rise() * position) * even.travel()),
                        "T_friction", new Torque((direction * even.coulomb() + even.viscous() * speed) * even.travel()),
                        "T_process", new Torque(even.process() * even.travel())),
                new Torque(piece.pull().at(t)));
    }

    /** From the mechanism's shaft through every stage to the motor: losses by the direction of power, what turns there, drag. */
    private void passed(LoadPiece piece, double t, double direction) {
        SequencedMap<String, Quantity> inputs =
                new LinkedHashMap<>(inputs("T_pull", new Torque(piece.pull().at(t))));
        String formula = "T_pull";
        double middle = piece.pull().at(piece.duration() / 2);
        double turns = 1 / balance.load().drivetrain().ratio();
        int number = 1;
        for (Stage stage : balance.load().drivetrain().stages()) {
            boolean drives = middle * direction >= 0;
            turns *= stage.ratio();
            double factor = stage.efficiency().factor(drives) / stage.ratio();
            double swing = piece.acceleration().at(t) * turns;
            if (factor != 1) {
                inputs.put("f_" + number, new Ratio(stage.efficiency().factor(drives)));
                inputs.put("i_" + number, new Ratio(stage.ratio()));
                formula = (formula.contains("+") ? "(" + formula + ")" : formula) + "·f_" + number + "/i_" + number;
            }
            if (stage.inertia() * swing != 0) {
                inputs.put("J_" + number, new Inertia(stage.inertia()));
                inputs.put("alpha_" + number, new AngularAcceleration(swing));
                formula += " + J_" + number + "·alpha_" + number;
            }
            if (stage.drag() != 0) {
                inputs.put("T_" + number, new Torque(direction * stage.drag()));
                formula += " + T_" + number;
            }
            middle = middle * factor
                    + stage.inertia() * turns * piece.acceleration().at(piece.duration() / 2)
                    + direction * stage.drag();
            number++;
        }
        add(
                "T_load",
                "T_load = " + formula
                        + "; from the mechanism to the motor, stage by stage: f 1/efficiency where the motor drives, "
                        + "the back-driving efficiency where the load does, J what turns at its input, T its drag",
                inputs,
                new Torque(piece.torque().at(t)));
    }

    private void power(double at, Power result) {
        LoadPiece piece = balance.mostAt(
                at,
                (one, time) ->
                        one.torque(balance.inertia()).at(time) * one.speed().at(time));
        double t = at - piece.start();
        add(
                "P_peak",
                "P_peak = T·w",
                inputs(
                        "t", new Time(at),
                        "T", new Torque(piece.torque(balance.inertia()).at(t)),
                        "w", new AngularSpeed(piece.speed().at(t))),
                result);
    }

    private void holding(Torque result) {
        add(
                "T_hold",
                "T_hold = T_shaft/i; the greatest pull at the mechanism's shaft wherever the load comes, no friction counted on",
                inputs(
                        "T_shaft", new Torque(balance.load().reach().holding()),
                        "i", new Ratio(balance.load().drivetrain().ratio())),
                result);
    }

    private void add(String symbol, String formula, SequencedMap<String, Quantity> inputs, Quantity result) {
        derivations.add(new Derivation(balance.subject(), symbol, formula, inputs, ShaftBalance.CLAUSE, result));
    }
}
