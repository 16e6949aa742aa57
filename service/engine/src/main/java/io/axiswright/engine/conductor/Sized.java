package io.axiswright.engine.conductor;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.standard.Source;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One circuit worked out.
 *
 * @param circuit the circuit
 * @param conductors its answer
 * @param device its protective device, unless the tables end before one
 * @param misfit what the largest size fails, where none serves
 * @param gap where the tables end before its conditions
 * @param sources where the table values used come from
 * @param derivations how its numbers came about
 */
record Sized(
        Circuit circuit,
        CircuitConductors conductors,
        @Nullable Device device,
        @Nullable Breach misfit,
        @Nullable Gap gap,
        List<Source> sources,
        List<Derivation> derivations) {}
