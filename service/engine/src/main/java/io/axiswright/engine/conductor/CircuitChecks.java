package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.standard.InsulationUnder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds what gives a request no meaning. */
final class CircuitChecks {

    private CircuitChecks() {}

    /**
     * Refuses duplicate ids and members that contradict each other.
     *
     * @throws InvalidDesign with every fault
     */
    static void check(ConductorRequest request) {
        var faults = new ArrayList<Fault>();
        Map<String, Integer> first = HashMap.newHashMap(request.circuits().size());
        for (int i = 0; i < request.circuits().size(); i++) {
            Circuit circuit = request.circuits().get(i);
            Integer earlier = first.putIfAbsent(circuit.id(), i);
            if (earlier != null) {
                faults.add(new Fault(
                        "/circuits/" + i + "/id",
                        FaultCode.DUPLICATE_ID,
                        "\"" + circuit.id() + "\" is already the id of circuit " + earlier,
                        "an id no other circuit has"));
            }
            contradictions(circuit, i, request.codeBasis(), faults);
        }
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
    }

    private static void contradictions(Circuit circuit, int i, CodeBasis basis, List<Fault> faults) {
        if (InsulationUnder.of(basis, circuit.insulation()).isEmpty()) {
            faults.add(InsulationUnder.fault("/circuits/" + i + "/insulation"));
        }
        if (circuit.kind() == CircuitKind.DC && circuit.powerFactor() != 1) {
            faults.add(new Fault(
                    "/circuits/" + i + "/powerFactor",
                    FaultCode.INCONSISTENT,
                    "direct current has no power factor of " + circuit.powerFactor(),
                    "1 for DC"));
        }
        if (circuit.prospectiveFaultCurrent() != null && circuit.clearingTime() == null) {
            faults.add(missing(i, "clearingTime", "the fault current is given without the time it flows"));
        }
        if (circuit.prospectiveFaultCurrent() == null && circuit.clearingTime() != null) {
            faults.add(missing(i, "prospectiveFaultCurrent", "the clearing time is given without the fault current"));
        }
        LoadChecks.check(circuit, i, faults);
    }

    private static Fault missing(int i, String member, String detail) {
        return new Fault("/circuits/" + i + "/" + member, FaultCode.MISSING, detail, "both or none of the two");
    }
}
