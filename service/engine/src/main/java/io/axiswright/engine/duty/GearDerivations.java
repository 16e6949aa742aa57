package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;

/** How the torques at the output of a gear unit at the motor came about. */
final class GearDerivations {

    private GearDerivations() {}

    /** Of an axis with such a gear unit. */
    static List<Derivation> of(Axis axis, GearOutput output) {
        List<Derivation> derivations = new ArrayList<>();
        var balance = new ShaftBalance(axis.id(), output.load(), output.inertia());
        derivations.add(peak(balance, output));
        derivations.add(new Derivation(
                axis.id(),
                "M_rms",
                DutyDerivations.RMS_TORQUE.replace("T_rms", "M_rms"),
                DutyDerivations.rms(output.sums(), output.inertia()),
                DutyDerivations.EQUIVALENT_TORQUE,
                new Torque(output.rms())));
        HardestStop stop = output.hardest();
        if (stop.size() > 0) {
            derivations.add(
                    balance.stop("M_stop", stop, Extreme.ofTorque(stop.course()).at(), new Torque(stop.size())));
        }
        return derivations;
    }

    private static Derivation peak(ShaftBalance balance, GearOutput output) {
        AxisLoad load = output.load();
        Torque peak = new Torque(output.peak());
        return output.peak() == load.holdingTorque()
                ? new Derivation(
                        balance.subject(),
                        "M_peak",
                        "M_peak = T_shaft/i; what the load pulls with at rest at the mechanism's shaft, losses not counted on",
                        inputs(
                                "T_shaft", new Torque(load.reach().holding()),
                                "i", new Ratio(load.drivetrain().ratio())),
                        ShaftBalance.CLAUSE,
                        peak)
                : balance.torque(
                        "M_peak",
                        Extreme.ofTorque(load.course(output.inertia())).at(),
                        peak);
    }
}
