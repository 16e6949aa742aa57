package io.axiswright.engine.conductor;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.standard.ConductorClass;
import java.util.List;

/** What stands against the chosen conductor beside its current: terminals it does not go into, strands too coarse to flex. */
final class ConstructionFindings {

    private ConstructionFindings() {}

    static void add(Sized sized, String pointer, List<Finding> findings) {
        Circuit circuit = sized.circuit();
        ConductorSize conductor = sized.conductors().conductor();
        ConductorSize largest = TerminalFit.exceeded(circuit, conductor);
        if (conductor != null && largest != null) {
            findings.add(FindingCode.CONDUCTOR_TERMINAL_TOO_SMALL.at(
                    circuit.id() + " need " + conductor + ", its terminals take at most " + largest,
                    pointer + "/terminals/largest",
                    TerminalFit.CLAUSE,
                    conductor.area(),
                    largest.area()));
        }
        boolean aluminium = circuit.material() == ConductorMaterial.ALUMINIUM;
        if (aluminium && conductor != null && Boolean.FALSE.equals(circuit.aluminiumTerminals())) {
            findings.add(FindingCode.CONDUCTOR_TERMINAL_NOT_FOR_ALUMINIUM.at(
                    circuit.id(), pointer + "/material", TerminalFit.CLAUSE, conductor.area(), null));
        }
        if (Boolean.TRUE.equals(circuit.moving())
                && (aluminium || circuit.conductorClass() == ConductorClass.CLASS_2)) {
            findings.add(FindingCode.CONDUCTOR_NOT_FLEXIBLE.at(
                    circuit.id(),
                    pointer + (aluminium ? "/material" : "/conductorClass"),
                    "IEC 60204-1:2016 12.2, Table 5 (from memory)",
                    null,
                    null));
        }
    }
}
