package io.axiswright.engine.standard;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Where a value comes from.
 *
 * @param clause standard, edition and clause or table
 * @param confidence how well the value is known
 */
public record Source(String clause, Confidence confidence) {

    /** The clause, marked where its value was not confirmed from an open copy. */
    public String told() {
        return confidence == Confidence.FROM_MEMORY ? clause + " (from memory)" : clause;
    }

    /**
     * Which of the tables that were read are from memory, each once.
     *
     * @param code the finding that says so, of the number of such tables and of all
     * @return nothing where all were confirmed
     */
    public static Optional<Finding> fromMemory(Collection<Source> read, FindingCode code) {
        List<String> unsure = read.stream()
                .filter(source -> source.confidence() == Confidence.FROM_MEMORY)
                .map(Source::clause)
                .distinct()
                .toList();
        long tables = read.stream().map(Source::clause).distinct().count();
        return unsure.isEmpty()
                ? Optional.empty()
                : Optional.of(code.at(
                        String.join("; ", unsure),
                        "/codeBasis",
                        "common practice, no source",
                        new Ratio(unsure.size()),
                        new Ratio(tables)));
    }
}
