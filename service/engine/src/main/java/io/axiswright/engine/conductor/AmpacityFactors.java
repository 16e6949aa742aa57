package io.axiswright.engine.conductor;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Quantity;
import java.util.LinkedHashMap;

/** The factors whose product is an ampacity, each with its clause. */
final class AmpacityFactors {

    private final LinkedHashMap<String, Quantity> values = new LinkedHashMap<>();
    private final StringBuilder clauses = new StringBuilder();

    void add(String symbol, Quantity value, String clause) {
        values.put(symbol, value);
        clauses.append(clauses.isEmpty() ? "" : "; ").append(clause);
    }

    Derivation product(String circuit, Current ampacity) {
        return new Derivation(circuit, "Iz", String.join(" · ", values.keySet()), values, clauses.toString(), ampacity);
    }
}
