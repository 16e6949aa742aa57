package io.axiswright.engine.controlpower;

import static io.axiswright.engine.finding.FindingCode.CONTROL_CABLES_JOINED;
import static io.axiswright.engine.finding.FindingCode.CONTROL_CABLE_NONE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_CHAIN_COLLAPSE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_PASS_THROUGH_CURRENT;
import static io.axiswright.engine.finding.FindingCode.CONTROL_VOLTAGE_BELOW_BAND;
import static io.axiswright.engine.finding.FindingCode.CONTROL_VOLTAGE_LOW;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What there is to remark about one chain: cables, collapse, voltages and currents through gateways. */
final class ControlFindings {

    static final String POINTER = "/design/controlPower";
    static final String PRACTICE = "common practice, no source";

    private static final String BAND = "IEC 61131-2 (24 V DC, -15 % / +20 %), from memory";
    static final String ITEM = "catalogue data of the item";

    private ControlFindings() {}

    static String axisPointer(ControlLoad load) {
        return "/design/axes/" + load.axisIndex();
    }

    static List<Finding> of(ChainPlan plan, @Nullable Double collapse, double longestCable) {
        List<Finding> findings = new ArrayList<>();
        for (int k = 0; k < plan.cables().size(); k++) {
            ControlNode node = plan.network().gateways().get(k);
            plan.cables()
                    .get(k)
                    .filter(cable -> cable.extension() != null)
                    .ifPresent(cable -> findings.add(
                            CONTROL_CABLES_JOINED.at(node.id(), POINTER, PRACTICE, node.feedLength(), cable.length())));
            if (plan.cables().get(k).isEmpty()) {
                findings.add(CONTROL_CABLE_NONE.at(
                        node.id(), POINTER, PRACTICE, node.feedLength(), new Length(longestCable)));
            }
        }
        plan.state().ifPresent(state -> working(plan.network(), state, findings));
        if (plan.isCabled() && plan.state().isEmpty()) {
            findings.add(CONTROL_CHAIN_COLLAPSE.at(
                    plan.network().chain(),
                    POINTER,
                    "derived: a constant-power load draws more current as its voltage falls",
                    collapse == null ? null : new Ratio(collapse),
                    new Ratio(1)));
        }
        return findings;
    }

    private static void working(ChainNetwork network, ChainState state, List<Finding> findings) {
        for (int k = 0; k < network.terminals().size(); k++) {
            voltage(network.terminals().get(k), state, k, findings);
        }
        for (int k = 0; k < network.gateways().size(); k++) {
            ControlNode node = network.gateways().get(k);
            Current limit = node.gateway().passThroughCurrent();
            if (state.linkCurrent(k) > limit.si()) {
                findings.add(CONTROL_PASS_THROUGH_CURRENT.at(
                        node.id(), POINTER, ITEM, new Current(state.linkCurrent(k)), limit));
            }
        }
    }

    /** A voltage below what the item itself needs is a violation, one only below the band a caution. */
    private static void voltage(Terminal terminal, ChainState state, int index, List<Finding> findings) {
        double lowest = state.lowest(index);
        double release = state.release(index);
        if (lowest < terminal.minimum()) {
            findings.add(low(terminal, lowest, terminal.minimum()));
        } else if (release < terminal.brakeMinimum()) {
            findings.add(low(terminal, release, terminal.brakeMinimum()));
        } else if (lowest < ControlConstants.BAND_LOW) {
            findings.add(CONTROL_VOLTAGE_BELOW_BAND.at(
                    terminal.subject(),
                    terminal.pointer(),
                    BAND,
                    new Voltage(lowest),
                    new Voltage(ControlConstants.BAND_LOW)));
        }
    }

    private static Finding low(Terminal terminal, double voltage, double needed) {
        return CONTROL_VOLTAGE_LOW.at(
                terminal.subject(), terminal.pointer(), ITEM, new Voltage(voltage), new Voltage(needed));
    }
}
