package io.axiswright.engine.controlpower;

import static io.axiswright.engine.finding.FindingCode.CONTROL_BRAKE_RELEASE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_REDUNDANCY_NONE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_START_LOCK;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SUPPLY_MAINS_VOLTAGE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SUPPLY_OVERLOADED;
import static io.axiswright.engine.finding.FindingCode.CONTROL_VOLTAGE_ABOVE_BAND;

import io.axiswright.engine.design.Mains;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What there is to remark about one control supply. */
final class SupplyFindings {

    private final String subject;
    private final List<Finding> findings = new ArrayList<>();

    private SupplyFindings(String subject) {
        this.subject = subject;
    }

    static List<Finding> of(
            SupplyGroup group, PlacedControlSupply placed, Buffering buffering, ControlPowerRequest request) {
        SupplyFindings notes = new SupplyFindings(placed.id());
        notes.load(group);
        notes.voltages(group, request.mains());
        notes.findings.addAll(OutputFindings.of(group, placed.id(), request));
        notes.findings.addAll(HoldUpFindings.of(group, placed, buffering, request));
        notes.care(group);
        return notes.findings;
    }

    private void load(SupplyGroup group) {
        Current available = new Current(group.availableCurrent());
        if (!group.suffices()) {
            add(CONTROL_SUPPLY_OVERLOADED, ControlFindings.PRACTICE, new Current(group.neededCurrent()), available);
        }
        if (!group.isRedundantEnough()) {
            add(
                    CONTROL_REDUNDANCY_NONE,
                    ControlFindings.PRACTICE,
                    new Ratio(group.supply().mostParallel()),
                    new Ratio(group.wanted() + 1));
        }
        if (!group.starts()) {
            add(
                    CONTROL_START_LOCK,
                    "derived: the output rises past V only if it gives more than the sum of P/V of what has started",
                    new Current(group.startCurrent()),
                    available);
        }
    }

    private void voltages(SupplyGroup group, Mains mains) {
        Voltage output = group.supply().outputVoltage();
        if (output.si() > ControlConstants.BAND_HIGH) {
            add(
                    CONTROL_VOLTAGE_ABOVE_BAND,
                    "IEC 61131-2 (24 V DC, -15 % / +20 %), from memory",
                    output,
                    new Voltage(ControlConstants.BAND_HIGH));
        }
        if (!group.matchesMains()) {
            add(
                    CONTROL_SUPPLY_MAINS_VOLTAGE,
                    ControlFindings.PRACTICE,
                    mains.voltage(),
                    group.supply().ratedVoltage());
        }
    }

    private void care(SupplyGroup group) {
        long brakes = group.plans().stream()
                .flatMap(plan -> plan.network().terminals().stream())
                .filter(Terminal::hasBrake)
                .count();
        if (brakes > 0) {
            add(CONTROL_BRAKE_RELEASE, "ISO 12100 (gravity and stored energy), from memory", new Ratio(brakes), null);
        }
    }

    private void add(FindingCode code, String clause, Quantity value, @Nullable Quantity limit) {
        findings.add(code.at(subject, ControlFindings.POINTER, clause, value, limit));
    }
}
