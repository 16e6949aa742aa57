package io.axiswright.engine.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Whether derivations lead to their results. */
public final class LeadingDerivations {

    private static final double ROUNDING = 1e-9;

    private LeadingDerivations() {}

    /**
     * Works every formula out from its inputs.
     *
     * @param open symbols of results that no closed formula leads to; anything else must have one, and these must not
     * @return the symbols worked out
     */
    public static Set<String> assertTheyLead(List<Derivation> derivations, Set<String> open) {
        Set<String> worked = new TreeSet<>();
        for (Derivation derivation : derivations) {
            Optional<Double> value = FormulaReader.value(derivation);
            String symbol = derivation.symbol();
            assertThat(value.isEmpty()).as("closed? %s", derivation).isEqualTo(open.contains(symbol));
            value.ifPresent(number -> {
                assertThat(derivation.result().si())
                        .as(derivation.toString())
                        .isCloseTo(number, within(ROUNDING * (Math.abs(number) + scale(derivation))));
                worked.add(symbol);
            });
        }
        return worked;
    }

    /** What the result may be a difference of: its largest input of the same kind. */
    private static double scale(Derivation derivation) {
        return derivation.inputs().values().stream()
                .filter(input -> input.getClass() == derivation.result().getClass())
                .mapToDouble(input -> Math.abs(input.si()))
                .max()
                .orElse(0);
    }
}
