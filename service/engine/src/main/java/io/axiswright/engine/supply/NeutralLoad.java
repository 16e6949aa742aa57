package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the neutral of three lines can carry. Sines cancel in it, the pulses of one-phase rectifiers do not: they come one after the
 * other. Currents between different lines and neutral that are sines, square waves or pulses of up to a third of a period never flow
 * in the same direction for longer than against each other, so the square of their sum is no more, on the mean, than the sum of their
 * squares; three like rectifiers with short pulses reach it, √3 times the current of a line.
 *
 * @param current the most it can carry
 * @param derivation how it came about
 */
record NeutralLoad(Current current, Derivation derivation) {

    private static final String CLAUSE =
            "derived: pulses of rectifiers on different lines never cancel (IEC 60364-5-52 Annex E, NFPA 70 220.61(C)(2))";

    /** Of the circuits between a line and neutral; nothing but beside three lines. */
    static @Nullable NeutralLoad of(
            String feeder,
            MainsLines mains,
            DesignCurrents currents,
            List<LoadGroup> groups,
            List<BranchCircuit> circuits) {
        if (mains.lines().size() != 3) {
            return null;
        }
        var inputs = new LinkedHashMap<String, Quantity>();
        double squares = 0;
        for (String line : mains.lines()) {
            double onLine = currents.feeder(toNeutral(line, groups, circuits));
            squares += onLine * onLine;
            inputs.put("I_" + line + "N", new Current(onLine));
        }
        var current = new Current(Math.sqrt(squares));
        return new NeutralLoad(current, new Derivation(feeder, "I_N", "sqrt(sum(I_LN^2))", inputs, CLAUSE, current));
    }

    private static List<SupplyLoad> toNeutral(String line, List<LoadGroup> groups, List<BranchCircuit> circuits) {
        var loads = new ArrayList<SupplyLoad>();
        for (int k = 0; k < groups.size(); k++) {
            var circuit = circuits.get(k);
            if (circuit.connection() == Connection.LINE_TO_NEUTRAL
                    && circuit.lines().contains(line)) {
                loads.addAll(groups.get(k).loads());
            }
        }
        return loads;
    }
}
