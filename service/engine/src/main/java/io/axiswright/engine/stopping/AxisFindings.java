package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;

/** What must be said about an axis left without torque. */
final class AxisFindings {

    private static final String CLAUSE = "IEC 60204-1:2016 9.2.2";
    private static final String DERIVED = "derived: J·dw/dt = T_brake ± T_load";

    private static final String GEARED = "derived: M_gear = i·J_load·(T_brake ± T_load)/J ± T_load";

    private final PowerLoss loss;
    private final StoppingAxis axis;
    private final boolean uncontrolled;
    private final List<Finding> findings = new ArrayList<>();

    /** About an axis whose stop zone may take its power away at once. */
    AxisFindings(PowerLoss loss, boolean uncontrolled) {
        this.loss = loss;
        this.axis = loss.axis();
        this.uncontrolled = uncontrolled;
    }

    List<Finding> all() {
        if (loss.rests()) {
            resting();
        } else {
            restless();
        }
        if (loss.rests() && !axis.coasting().even()) {
            findings.add(FindingCode.STOPPING_LOAD_UNEVEN.at(
                    axis.id(),
                    axis.pointer() + "/mechanism",
                    DERIVED,
                    loss.stopping().stoppingTime(),
                    null));
        }
        return findings;
    }

    private void resting() {
        Displacement fall = loss.stopping().fall();
        if (fall != null && fall.si() > 0) {
            findings.add(FindingCode.STOPPING_LOAD_FALLS.at(
                    axis.id(), axis.pointer(), DERIVED, fall, loss.stopping().stoppingTime()));
        }
        HoldingBrake brake = axis.brake();
        Energy energy = loss.stopping().brakeEnergy();
        if (brake != null && energy != null && brake.stopEnergy() != null) {
            if (energy.si() > brake.stopEnergy().si()) {
                findings.add(FindingCode.STOPPING_BRAKE_ENERGY_HIGH.at(
                        axis.id(), axis.pointer() + "/drive", DERIVED, energy, brake.stopEnergy()));
            }
        }
        Torque geared = loss.stopping().gearTorque();
        Torque bearable = axis.gearStopTorque();
        if (geared != null && bearable != null && geared.si() > bearable.si()) {
            findings.add(FindingCode.STOPPING_GEAR_TORQUE_HIGH.at(
                    axis.id(), axis.pointer() + "/drive", GEARED, geared, bearable));
        }
        if (brake != null && energy != null && (brake.stopEnergy() == null || brake.stopTorqueShare() == null)) {
            findings.add(FindingCode.STOPPING_BRAKE_UNCHECKED.at(
                    axis.id(),
                    axis.pointer() + "/drive",
                    DERIVED,
                    energy,
                    new Torque(BrakeAction.of(brake).torque())));
        }
        if (uncontrolled) {
            FindingCode code = brake == null ? FindingCode.STOPPING_BY_FRICTION : FindingCode.STOPPING_WITHOUT_TORQUE;
            findings.add(code.at(
                    axis.id(),
                    axis.pointer(),
                    CLAUSE,
                    loss.stopping().distance(),
                    brake == null ? loss.stopping().stoppingTime() : brake.engageDelay()));
        }
    }

    private void restless() {
        HoldingBrake brake = axis.brake();
        if (brake != null) {
            findings.add(FindingCode.STOPPING_BRAKE_WEAK.at(
                    axis.id(),
                    axis.pointer() + "/drive",
                    DERIVED,
                    new Torque(BrakeAction.of(brake).torque()),
                    null));
        } else if (axis.coasting().gravity() && axis.coasting().locks()) {
            findings.add(
                    FindingCode.STOPPING_LOCK_UNSURE.at(axis.id(), axis.pointer() + "/mechanism", DERIVED, null, null));
        } else if (axis.coasting().gravity()) {
            findings.add(FindingCode.STOPPING_LOAD_UNHELD.at(axis.id(), axis.pointer() + "/drive", CLAUSE, null, null));
        } else if (uncontrolled) {
            findings.add(FindingCode.STOPPING_NEVER_RESTS.at(axis.id(), axis.pointer() + "/drive", CLAUSE, null, null));
        }
    }
}
