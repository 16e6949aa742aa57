package io.axiswright.engine.conductor;

import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.standard.InsulationUnder;
import io.axiswright.engine.standard.Limits;

/** Temperature columns of the ampacity tables. */
final class Columns {

    private static final double ICE_POINT = 273.15;

    private Columns() {}

    /** Highest conductor temperature of an insulation in °C. */
    static double celsius(Insulation insulation) {
        return InsulationUnder.celsius(insulation);
    }

    /** Highest conductor temperature of an insulation in K. */
    static double kelvin(Insulation insulation) {
        return celsius(insulation) + ICE_POINT;
    }

    /**
     * The column that terminals allow (NFPA 70 110.14(C)): that of their marking or of the insulation, whichever is lower.
     * A marking between two columns counts as the lower one.
     */
    static Insulation terminal(Temperature marking, Insulation insulation) {
        double allowed = Math.min(Limits.celsius(marking), celsius(insulation));
        if (allowed >= celsius(Insulation.NEC_90)) {
            return Insulation.NEC_90;
        }
        return allowed >= celsius(Insulation.NEC_75) ? Insulation.NEC_75 : Insulation.NEC_60;
    }
}
