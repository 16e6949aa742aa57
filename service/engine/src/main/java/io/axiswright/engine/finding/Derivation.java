package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.Quantity;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SequencedMap;

/**
 * How one number came about.
 *
 * @param subject what it belongs to, in the caller's words (an axis id, a circuit id)
 * @param symbol the number's symbol or name
 * @param formula the formula as a handbook writes it
 * @param inputs the symbols of the formula with their values, in the order of the formula
 * @param clause where the formula stands: standard and clause, handbook, or "derived" / "common practice, no source"
 * @param result the number
 */
public record Derivation(
        String subject,
        String symbol,
        String formula,
        SequencedMap<String, Quantity> inputs,
        String clause,
        Quantity result) {

    /** Inputs given as alternating symbol and quantity keep their order. */
    public static SequencedMap<String, Quantity> inputs(Object... symbolAndValue) {
        var map = new LinkedHashMap<String, Quantity>();
        for (int k = 0; k < symbolAndValue.length; k += 2) {
            map.put((String) symbolAndValue[k], (Quantity) symbolAndValue[k + 1]);
        }
        return Collections.unmodifiableSequencedMap(map);
    }

    /** Takes the inputs over, without a copy: results hold many derivations. Nobody can change them through it. */
    public Derivation {
        inputs = Collections.unmodifiableSequencedMap(inputs);
    }

    /** Whether the number was worked out from the given symbol. */
    public boolean uses(String input) {
        return ((Map<String, Quantity>) inputs).containsKey(input);
    }
}
