package io.axiswright.engine.study;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.List;

/** The same insulation in the words of the other code, never credited with more temperature than it has. */
final class InsulationUnder {

    private InsulationUnder() {}

    /** The insulation to look up under a code basis, so that one design can be studied under both. */
    static Insulation of(CodeBasis basis, Insulation stated) {
        return switch (basis) {
            case IEC_60204_1 ->
                switch (stated) {
                    case PVC_70, NEC_75 -> Insulation.PVC_70;
                    case XLPE_90, NEC_90 -> Insulation.XLPE_90;
                    case NEC_60 ->
                        throw new InvalidDesign(List.of(new Fault(
                                "/design/installation/insulation",
                                FaultCode.INCONSISTENT,
                                "the IEC tables know no 60 °C insulation",
                                "PVC_70 or XLPE_90 under IEC_60204_1")));
                };
            case NFPA_79 ->
                switch (stated) {
                    case PVC_70, NEC_60 -> Insulation.NEC_60;
                    case NEC_75 -> Insulation.NEC_75;
                    case XLPE_90, NEC_90 -> Insulation.NEC_90;
                };
        };
    }

    /** Highest conductor temperature, °C. */
    static int celsius(Insulation insulation) {
        return switch (insulation) {
            case NEC_60 -> 60;
            case PVC_70 -> 70;
            case NEC_75 -> 75;
            case XLPE_90, NEC_90 -> 90;
        };
    }
}
