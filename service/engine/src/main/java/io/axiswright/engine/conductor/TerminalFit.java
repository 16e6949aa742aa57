package io.axiswright.engine.conductor;

import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import org.jspecify.annotations.Nullable;

/** The sizes the terminals take: thinner ones are passed over; one too thick is still the answer, with a finding. */
public final class TerminalFit {

    /** Where it stands. */
    public static final String CLAUSE = "NFPA 70:2023 110.14(A), IEC 60204-1:2016 13.1.1 (from memory)";

    private TerminalFit() {}

    static @Nullable Breach breach(Circuit circuit, double area) {
        TerminalRange range = circuit.terminals();
        if (range == null || range.smallest() == null || range.holds(area)) {
            return null;
        }
        return new Breach(Limit.TERMINAL_RANGE, new Area(area), range.smallest().area(), CLAUSE);
    }

    /** The largest size the terminals take, where a conductor is thicker; null where it goes in. */
    static @Nullable ConductorSize exceeded(Circuit circuit, @Nullable ConductorSize conductor) {
        TerminalRange range = circuit.terminals();
        return conductor == null
                        || range == null
                        || range.admits(conductor.area().si())
                ? null
                : range.largest();
    }
}
