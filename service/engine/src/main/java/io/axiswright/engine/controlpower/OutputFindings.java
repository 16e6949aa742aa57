package io.axiswright.engine.controlpower;

import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_CONDUCTOR;
import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_NOT_CLEARED;
import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_RATING;
import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_UNPROTECTED;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.Optional;

/** What there is to remark about the protection of one control supply's output circuits. */
final class OutputFindings {

    private static final String SHORT_CIRCUIT = "IEC 60364-4-43 434.5.2, from memory";

    private OutputFindings() {}

    static List<Finding> of(SupplyGroup group, String supply, ControlPowerRequest request) {
        if (request.protections().isEmpty()) {
            return List.of(CONTROL_OUTPUT_UNPROTECTED.at(
                    supply, ControlFindings.POINTER, SHORT_CIRCUIT, new Current(most(group)), null));
        }
        return group.protections().stream()
                .map(circuit -> of(circuit, request.codeBasis()))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Of several that its protection misses the first counts. */
    private static Optional<Finding> of(CircuitProtection circuit, CodeBasis basis) {
        Current rating = circuit.device().rating();
        String chain = circuit.plan().network().chain();
        if (!circuit.carries()) {
            double worst = circuit.plan().currents().worstCurrent();
            return Optional.of(CONTROL_OUTPUT_RATING.at(
                    chain, ControlFindings.POINTER, ControlFindings.ITEM, new Current(worst), rating));
        }
        if (!circuit.clears()) {
            return Optional.of(CONTROL_OUTPUT_NOT_CLEARED.at(
                    circuit.far().terminal().subject(),
                    circuit.far().terminal().pointer(),
                    SHORT_CIRCUIT,
                    new Current(circuit.faultCurrent()),
                    circuit.device().operatingCurrent(new Time(ControlConstants.CLEARING_TIME))));
        }
        return circuit.suitsConductors()
                ? Optional.empty()
                : Optional.of(CONTROL_OUTPUT_CONDUCTOR.at(
                        chain,
                        ControlFindings.POINTER,
                        ConductorLoad.clause(basis),
                        rating,
                        new Current(circuit.far().ampacity().orElse(0))));
    }

    private static double most(SupplyGroup group) {
        var overload = group.supply().overload();
        return overload == null
                ? group.availableCurrent()
                : Math.max(group.availableCurrent(), overload.current().si() * group.count());
    }
}
