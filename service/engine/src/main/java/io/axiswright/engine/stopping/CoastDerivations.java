package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/**
 * How an axis's stop without motor torque came about: phase by phase, each with what turns in it and what holds it back. Each figure
 * is that of the stop that is the worst for it, so speeds may differ from one to the other.
 */
final class CoastDerivations {

    private static final String MOTION = "derived: J·dw/dt = −(T_brake + T + k·w), from event to event";

    private static final String MEANING =
            "; w: speeds of the motor shaft, J: all that turns with it, T: what the load holds back "
                    + "(negative: drives), by the efficiencies of that direction of power, k: viscous friction";

    private final PowerLoss loss;
    private final BrakeAction brake;
    private final List<Derivation> derivations = new ArrayList<>();

    private CoastDerivations(PowerLoss loss) {
        this.loss = loss;
        brake = BrakeAction.of(loss.axis().brake());
    }

    /** Of an axis that moves, and comes to rest. */
    static List<Derivation> of(PowerLoss loss) {
        var all = new CoastDerivations(loss);
        WorstStops.Starts starts = loss.worst().starts();
        AxisStopping stop = loss.stopping();
        Time time = stop.stoppingTime();
        Displacement distance = stop.distance();
        Energy energy = stop.brakeEnergy();
        if (starts != null && time != null && distance != null) {
            all.time(starts.longest().phases(all.brake), time);
            all.distance(starts.farthest().phases(all.brake), distance);
            if (energy != null && starts.hottest() != null) {
                all.energy(starts.hottest().phases(all.brake), energy);
            }
            if (stop.gearTorque() != null
                    && starts.hardest() != null
                    && loss.axis().brake() != null) {
                all.gear(loss.axis().brake(), starts.hardest(), stop.gearTorque());
            }
        }
        return all.derivations;
    }

    /** One formula being written, with its inputs. */
    private static final class Sum {
        private final SequencedMap<String, Quantity> inputs = new LinkedHashMap<>();
        private final StringBuilder formula = new StringBuilder();

        void plus(String term) {
            formula.append(formula.isEmpty() ? "" : " + ").append(term);
        }

        /** The symbol of an input. */
        String with(String symbol, Quantity value) {
            inputs.put(symbol, value);
            return symbol;
        }
    }

    private void time(List<CoastPhase> phases, Time result) {
        var sum = new Sum();
        List<CoastPhase> braking = phases.stream().filter(CoastPhase::braking).toList();
        if (!braking.isEmpty()) {
            biting(phases);
            sum.plus(sum.with("t_apply", new Time(brake.delay())));
        }
        List<CoastPhase> all = braking.isEmpty() ? phases : braking;
        for (int k = 1; k <= all.size(); k++) {
            CoastPhase phase = all.get(k - 1);
            String inertia = sum.with("J_" + k, new Inertia(phase.inertia()));
            String from = speed(sum, k, phase.from());
            String to = phase.to() == 0 ? "" : speed(sum, k + 1, phase.to());
            String torque = torque(sum, k, phase);
            if (phase.thick()) {
                String viscous = sum.with("k_" + k, new RotaryDamping(phase.viscous()));
                sum.plus(inertia + "/" + viscous + "·ln((" + torque + " + " + viscous + "·" + from + ")/(" + torque
                        + (to.isEmpty() ? "" : " + " + viscous + "·" + to) + "))");
            } else {
                sum.plus(inertia + "·" + difference(from, to) + "/(" + torque + ")");
            }
        }
        add("t_0", sum, MEANING, result);
    }

    /** The speed at which the brake bites, by the last phase before it. */
    private void biting(List<CoastPhase> phases) {
        CoastPhase last = phases.stream()
                .filter(phase -> !phase.braking())
                .reduce((one, next) -> next)
                .orElse(null);
        if (last == null) {
            return;
        }
        var sum = new Sum();
        String from = sum.with("w_0", new AngularSpeed(last.from()));
        String torque = sum.with("T", new Torque(last.torque()));
        String time = sum.with("t", new Time(last.duration()));
        String inertia = sum.with("J", new Inertia(last.inertia()));
        if (last.thick()) {
            String viscous = sum.with("k", new RotaryDamping(last.viscous()));
            String end = torque + "/" + viscous;
            sum.plus("(" + from + " + " + end + ")·e^(−" + viscous + "·" + time + "/" + inertia + ") − " + end);
        } else {
            sum.plus(from + " − " + torque + "·" + time + "/" + inertia);
        }
        add(
                "w_1",
                sum,
                ", when the brake bites; the last phase before it, from w_0 on for t" + MEANING,
                new AngularSpeed(last.to()));
    }

    private void distance(List<CoastPhase> phases, Displacement result) {
        var sum = new Sum();
        double travel = loss.axis().coasting().travel();
        String way = sum.with("r", result instanceof Length ? new Length(travel) : new Ratio(travel));
        sum.plus(way + "·(" + angle(sum, phases) + ")");
        add(
                "s_0",
                sum,
                ", r: way of the load per radian of the motor shaft, t: times of the phases from power-off to rest",
                result);
    }

    private void energy(List<CoastPhase> phases, Energy result) {
        var sum = new Sum();
        String torque = sum.with("T_brake", new Torque(brake.torque()));
        List<CoastPhase> braking = phases.stream().filter(CoastPhase::braking).toList();
        if (braking.stream().noneMatch(CoastPhase::thick)) {
            for (int k = 1; k <= braking.size(); k++) {
                CoastPhase phase = braking.get(k - 1);
                String inertia = sum.with("J_" + k, new Inertia(phase.inertia()));
                String from = speed(sum, k, phase.from()) + "²";
                String to = phase.to() == 0 ? "" : speed(sum, k + 1, phase.to()) + "²";
                sum.plus("½·" + inertia + "·" + difference(from, to) + "·" + torque + "/(" + torque(sum, k, phase)
                        + ")");
            }
            add("E_brake", sum, ", the brake's share of the kinetic energy" + MEANING, result);
        } else {
            sum.plus(torque + "·(" + angle(sum, braking) + ")");
            add("E_brake", sum, ", torque times the angle turned against it" + MEANING, result);
        }
    }

    /** The angle turned in some phases, there and back. */
    private static String angle(Sum sum, List<CoastPhase> phases) {
        var angle = new StringBuilder();
        for (int k = 1; k <= phases.size(); k++) {
            CoastPhase phase = phases.get(k - 1);
            String time = sum.with("t_" + k, new Time(phase.duration()));
            boolean rising = phase.to() > phase.from();
            String from = phase.from() == 0 ? "" : sum.with("w_" + k, new AngularSpeed(phase.from()));
            String to = phase.to() == 0 ? "" : sum.with("w_" + k + "'", new AngularSpeed(phase.to()));
            angle.append(k > 1 ? " + " : "");
            if (phase.thick()) {
                String viscous = sum.with("k_" + k, new RotaryDamping(phase.viscous()));
                String inertia = sum.with("J_" + k, new Inertia(phase.inertia()));
                String change =
                        rising ? "−" + inertia + "·" + difference(to, from) : inertia + "·" + difference(from, to);
                angle.append("(" + change + " − (" + torque(sum, k, phase) + ")·" + time + ")/" + viscous);
            } else {
                angle.append(mean(from, to) + "·" + time);
            }
        }
        return angle.toString();
    }

    private static String mean(String from, String to) {
        return from.isEmpty() || to.isEmpty() ? from + to + "/2" : "(" + from + " + " + to + ")/2";
    }

    private static String difference(String from, String to) {
        return to.isEmpty() ? from : "(" + from + " − " + to + ")";
    }

    private static String speed(Sum sum, int k, double value) {
        return sum.with("w_" + k, new AngularSpeed(value));
    }

    private static String torque(Sum sum, int k, CoastPhase phase) {
        String brake = phase.braking() ? sum.with("T_brake", new Torque(phase.brake())) + " + " : "";
        return brake + sum.with("T_" + k, new Torque(phase.torque()));
    }

    /** At the motor's side of the gear unit, where the brake sits. */
    private void gear(HoldingBrake holding, WorstStops.GearStart start, Torque result) {
        Freewheel.GearTorque gear = start.braking().gearTorque(start.speed());
        if (gear.factor() <= 0) {
            return; // what it lets nothing through it bears for other reasons than its motor's side
        }
        var sum = new Sum();
        double full = holding.torque().si();
        String torque = sum.with("T_brake", new Torque(full));
        String drag = sum.with("T_drag", new Torque(gear.drag()));
        String motor = sum.with("J_motor", new Inertia(gear.motorInertia()));
        sum.with("J", new Inertia(gear.inertia()));
        sum.with("T", new Torque(gear.inertia() * gear.deceleration() - full));
        String ratio = sum.with("i", new Ratio(gear.ratio()));
        String factor = sum.with("f", new Ratio(gear.factor()));
        sum.plus("|" + torque + " + " + drag + " − " + motor + "·a|·" + ratio + "/" + factor);
        add(
                "M_gear",
                sum,
                ", a = (T_brake + T)/J; J, T: all that turns and what else holds it back, at the motor, J_motor: what turns on its side, "
                        + "f: 1/efficiency where it drives the gear unit, the back-driving efficiency where the load does",
                result);
    }

    private void add(String symbol, Sum sum, String meaning, Quantity result) {
        derivations.add(new Derivation(
                loss.axis().id(), symbol, symbol + " = " + sum.formula + meaning, sum.inputs, MOTION, result));
    }
}
