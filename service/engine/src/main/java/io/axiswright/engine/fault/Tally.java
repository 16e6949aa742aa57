package io.axiswright.engine.fault;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Circuits of which the same is to be said, once, at the first of them. */
final class Tally {

    private final FindingCode code;
    private final String clause;
    private @Nullable FaultCircuit first;
    private int number;

    Tally(FindingCode code, String clause) {
        this.code = code;
        this.clause = clause;
    }

    void add(FaultCircuit circuit) {
        first = first == null ? circuit : first;
        number++;
    }

    /** The finding; none if there is no such circuit. */
    Stream<Finding> findings() {
        return first == null
                ? Stream.empty()
                : Stream.of(code.at(first.id(), first.pointer(), clause, new Ratio(number), null));
    }
}
