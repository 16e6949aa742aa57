package io.axiswright.engine.controlpower;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.standard.IecAmpacity;
import io.axiswright.engine.standard.IecConductors;
import io.axiswright.engine.standard.IecCorrection;
import io.axiswright.engine.standard.NecAmpacity;
import io.axiswright.engine.standard.NecCorrection;
import java.util.List;
import java.util.Optional;

/**
 * What the conductors of a 24 V circuit carry by the machine code: IEC 60204-1 Table 6, as a multicore cable in conduit, with Table
 * D.1; NFPA 79 Table 12.5.1, in the 60 °C column because neither insulation nor terminals are stated. A size of the other system
 * counts as the next one of the table that is no thicker.
 */
final class ConductorLoad {

    private ConductorLoad() {}

    /** The rules it follows. */
    static String clause(CodeBasis basis) {
        return switch (basis) {
            case IEC_60204_1 -> "IEC 60204-1:2016 Table 6 (method B2) and Table D.1, from memory";
            case NFPA_79 -> "NFPA 79:2021 Table 12.5.1 (60 °C), from memory; NFPA 70:2023 Table 310.15(B)(1)(1)";
        };
    }

    /** Its ampacity in that air; none if the table has no size so thin, zero where the air is hotter than its corrections go. */
    static Optional<Current> of(CodeBasis basis, ConductorSize size, Temperature air) {
        double correction = (switch (basis) {
                    case IEC_60204_1 -> IecCorrection.machineAmbient(air);
                    case NFPA_79 -> NecCorrection.ambient(Insulation.NEC_60, air);
                })
                .map(row -> row.value().si())
                .orElse(0.0);
        return listed(basis).stream()
                .filter(row -> row.compareTo(size) <= 0)
                .flatMap(row -> base(basis, row).stream())
                .reduce((thinner, last) -> last)
                .map(base -> new Current(correction * base.si()));
    }

    private static List<ConductorSize> listed(CodeBasis basis) {
        return switch (basis) {
            case IEC_60204_1 -> IecConductors.sizes(ConductorMaterial.COPPER);
            case NFPA_79 -> NecAmpacity.sizes(ConductorMaterial.COPPER);
        };
    }

    private static Optional<Current> base(CodeBasis basis, ConductorSize size) {
        return (switch (basis) {
                    case IEC_60204_1 -> IecAmpacity.machine(ConductorMaterial.COPPER, size, InstallationMethod.B2);
                    case NFPA_79 -> NecAmpacity.machine(size, Insulation.NEC_60);
                })
                .map(row -> row.value());
    }
}
