package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.Optional;

/** The same insulation in the words of the other code, never credited with more temperature than it has. */
public final class InsulationUnder {

    private InsulationUnder() {}

    /** The insulation to look up under a code, so that one design can be studied under both; nothing if it has none. */
    public static Optional<Insulation> of(CodeBasis basis, Insulation stated) {
        return switch (basis) {
            case IEC_60204_1 ->
                switch (stated) {
                    case PVC_70, NEC_75 -> Optional.of(Insulation.PVC_70);
                    case XLPE_90, NEC_90 -> Optional.of(Insulation.XLPE_90);
                    case NEC_60 -> Optional.empty();
                };
            case NFPA_79 ->
                Optional.of(
                        switch (stated) {
                            case PVC_70, NEC_60 -> Insulation.NEC_60;
                            case NEC_75 -> Insulation.NEC_75;
                            case XLPE_90, NEC_90 -> Insulation.NEC_90;
                        });
        };
    }

    /** What to say of an insulation that {@link #of} has nothing for. */
    public static Fault fault(String pointer) {
        return new Fault(
                pointer,
                FaultCode.INCONSISTENT,
                "the IEC tables begin with 70 °C insulation and have no column that 60 °C insulation bears",
                "PVC_70, XLPE_90, NEC_75 or NEC_90 under IEC_60204_1");
    }

    /** Highest conductor temperature, °C. */
    public static int celsius(Insulation insulation) {
        return switch (insulation) {
            case NEC_60 -> 60;
            case PVC_70 -> 70;
            case NEC_75 -> 75;
            case XLPE_90, NEC_90 -> 90;
        };
    }
}
