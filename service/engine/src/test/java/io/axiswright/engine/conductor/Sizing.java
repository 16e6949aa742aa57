package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import java.util.List;
import java.util.Objects;

/** Runs one circuit, for tests. */
final class Sizing {

    private Sizing() {}

    static CircuitConductors nec(CircuitBuilder circuit) {
        return one(CodeBasis.NFPA_79, circuit.build());
    }

    static CircuitConductors iec(CircuitBuilder circuit) {
        return one(CodeBasis.IEC_60204_1, circuit.build());
    }

    static CircuitConductors one(CodeBasis basis, Circuit circuit) {
        return run(basis, circuit).circuits().getFirst();
    }

    static ConductorResult run(CodeBasis basis, Circuit... circuits) {
        return new ConductorSizing().size(new ConductorRequest(basis, List.of(circuits)));
    }

    static String conductor(CircuitConductors answer) {
        return Objects.requireNonNull(answer.conductor(), answer::toString).label();
    }

    static String protective(CircuitConductors answer) {
        return Objects.requireNonNull(answer.protectiveConductor(), answer::toString)
                .label();
    }

    static double device(CircuitConductors answer) {
        return Objects.requireNonNull(answer.deviceRating()).si();
    }

    static double ampacity(CircuitConductors answer) {
        return Objects.requireNonNull(answer.correctedAmpacity()).si();
    }

    static double drop(CircuitConductors answer) {
        return Objects.requireNonNull(answer.voltageDrop()).si();
    }
}
