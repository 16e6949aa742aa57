package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.standard.InsulationUnder;
import io.axiswright.engine.standard.Source;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/** Finds the smallest conductor of each circuit that meets every limit of the code. */
public final class ConductorSizing {

    /**
     * Sizes the conductors of every circuit.
     *
     * @throws InvalidDesign if ids repeat or members contradict each other
     */
    public ConductorResult size(ConductorRequest request) {
        CircuitChecks.check(request);
        List<Sized> sized = request.circuits().stream()
                .map(circuit -> CircuitSizing.size(inTermsOf(request.codeBasis(), circuit), request.codeBasis()))
                .toList();
        var derivations = new ArrayList<Derivation>();
        var sources = new LinkedHashSet<Source>();
        sized.forEach(s -> {
            derivations.addAll(s.derivations());
            sources.addAll(s.sources());
        });
        return new ConductorResult(
                sized.stream().map(Sized::conductors).toList(),
                List.copyOf(sources),
                ConductorFindings.of(request, sized, sources),
                derivations);
    }

    private static Circuit inTermsOf(CodeBasis basis, Circuit circuit) {
        Insulation insulation = InsulationUnder.of(basis, circuit.insulation()).orElseThrow();
        return insulation == circuit.insulation() ? circuit : circuit.insulated(insulation);
    }
}
