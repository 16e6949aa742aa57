package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.design.Safeguard;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;

/** How the times and distances came about. */
final class StoppingDerivations {

    private static final String MOTION = "derived: J·dw/dt = −T_load, then −(T_brake ± T_load), from event to event";

    private StoppingDerivations() {}

    static List<Derivation> of(PowerLoss loss) {
        List<Derivation> derivations = new ArrayList<>();
        HoldingBrake brake = loss.axis().brake();
        AxisStopping stop = loss.stopping();
        Time time = stop.stoppingTime();
        Displacement distance = stop.distance();
        Energy energy = stop.brakeEnergy();
        if (brake != null && time != null && distance != null && energy != null) {
            var torque = new Torque(BrakeAction.of(brake).torque());
            derivations.add(new Derivation(
                    loss.axis().id(),
                    "t_0",
                    "t_0 = t_apply + J·w/(T_brake ± T_load)",
                    Derivation.inputs("t_apply", brake.engageDelay(), "T_brake", torque),
                    MOTION,
                    time));
            derivations.add(new Derivation(
                    loss.axis().id(),
                    "s_0",
                    "s_0 = integral of |v| from power-off to rest, at its longest over the cycle",
                    Derivation.inputs("t_apply", brake.engageDelay(), "T_brake", torque),
                    MOTION,
                    distance));
            derivations.add(new Derivation(
                    loss.axis().id(),
                    "E_brake",
                    "E_brake = T_brake·(angle turned against the brake) = ½·J·w² + work of the load − losses",
                    Derivation.inputs("T_brake", torque),
                    MOTION,
                    energy));
            Torque geared = stop.gearTorque();
            if (geared != null) {
                derivations.add(new Derivation(
                        loss.axis().id(),
                        "M_gear",
                        "M_gear = i·J_load·(T_brake ± T_load)/J ± T_load, losses by the direction of power",
                        Derivation.inputs("T_brake", brake.torque()),
                        MOTION,
                        geared));
            }
        }
        return derivations;
    }

    static List<Derivation> of(ZoneStudy study) {
        List<Derivation> derivations = new ArrayList<>();
        Time time = study.stopping().stoppingTime();
        if (time == null) {
            return derivations;
        }
        if (study.zone().category() != StopCategory.CATEGORY_0) {
            derivations.add(new Derivation(
                    study.zone().id(),
                    "t_stop",
                    "t_stop = t_reaction + t_deceleration",
                    Derivation.inputs(
                            "t_reaction",
                            study.zone().reactionTime(),
                            "t_deceleration",
                            study.zone().decelerationTime()),
                    "IEC 60204-1:2016 9.2.2",
                    time));
        }
        for (int k = 0; k < study.safeguards().size(); k++) {
            Safeguard safeguard = study.safeguards().get(k).safeguard();
            SafeguardDistance distance = study.stopping().safeguards().get(k);
            Time response = distance.responseTime();
            Length least = distance.leastDistance();
            if (response != null && least != null) {
                derivations.add(new Derivation(
                        safeguard.id(),
                        "T",
                        "T = t_response + t_stop",
                        Derivation.inputs("t_response", safeguard.responseTime(), "t_stop", time),
                        distance.clause(),
                        response));
                derivations.add(new Derivation(
                        safeguard.id(),
                        "S",
                        distance.formula(),
                        Derivation.inputs("K", distance.approachSpeed(), "T", response, "reach", distance.reach()),
                        distance.clause(),
                        least));
            }
        }
        return derivations;
    }
}
