package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Temperature;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Says once for each insulation that is stated in the other code's terms what it was looked up as. */
final class InsulationFindings {

    private InsulationFindings() {}

    static void add(ConductorRequest request, List<Sized> sized, List<Finding> findings) {
        Set<Insulation> said = EnumSet.noneOf(Insulation.class);
        for (int i = 0; i < sized.size(); i++) {
            Insulation stated = request.circuits().get(i).insulation();
            Insulation assumed = sized.get(i).circuit().insulation();
            if (stated != assumed && said.add(stated)) {
                findings.add(FindingCode.CONDUCTOR_INSULATION_ASSUMED.at(
                        stated + " is read as " + assumed,
                        "/circuits/" + i + "/insulation",
                        clause(request.codeBasis()),
                        temperature(stated),
                        temperature(assumed)));
            }
        }
    }

    private static String clause(CodeBasis basis) {
        return switch (basis) {
            case NFPA_79 -> "NFPA 70:2023 Table 310.16; the column is common practice, no source";
            case IEC_60204_1 -> "IEC 60204-1:2016 Table 6, IEC 60364-5-52; the column is common practice, no source";
        };
    }

    private static Temperature temperature(Insulation insulation) {
        return new Temperature(Columns.kelvin(insulation));
    }
}
