package io.axiswright.engine.conductor;

import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.List;

/** What a circuit may say only of the kind of load or lines it has. */
final class LoadChecks {

    private LoadChecks() {}

    static void check(Circuit circuit, int i, List<Fault> faults) {
        Current largest = circuit.largestLoad();
        if (largest != null && circuit.loadKind() != LoadKind.MOTOR_OR_DRIVE) {
            faults.add(fault(i, "largestLoad", "only motors and drives have a largest", "MOTOR_OR_DRIVE as loadKind"));
        } else if (largest != null && largest.si() > circuit.designCurrent().si()) {
            faults.add(fault(
                    i,
                    "largestLoad",
                    "the largest load takes more than all loads together",
                    "at most the design current"));
        }
        if (circuit.resistorPulse() != null && circuit.loadKind() != LoadKind.BRAKING_RESISTOR) {
            faults.add(fault(i, "resistorPulse", "the load is no resistor", "BRAKING_RESISTOR as loadKind"));
        }
        if (circuit.thirdHarmonic() != null && circuit.kind() != CircuitKind.AC_THREE_PHASE) {
            faults.add(fault(
                    i,
                    "thirdHarmonic",
                    "third harmonics add up in the neutral of three phases only",
                    "AC_THREE_PHASE as kind"));
        }
        TerminalRange terminals = circuit.terminals();
        if (terminals != null) {
            ConductorSize largestSize = terminals.largest();
            if (largestSize != null && !terminals.holds(largestSize.area().si())) {
                faults.add(fault(
                        i,
                        "terminals/largest",
                        "the largest size is below the smallest, " + terminals.smallest(),
                        "a size not below the smallest"));
            }
        }
    }

    private static Fault fault(int i, String member, String detail, String accepted) {
        return new Fault("/circuits/" + i + "/" + member, FaultCode.INCONSISTENT, detail, accepted);
    }
}
