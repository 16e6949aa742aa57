package io.axiswright.engine.fault;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.Source;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Short-circuit currents and what they mean. Nothing but the supply feeds a fault: drives behind rectifiers cannot feed back,
 * and motors straight on the line are counted only so far as a finding says that they are too large to be left out.
 *
 * @param points the supply terminals, the mains panel, transformers, then every load, by circuit; then the panel behind each
 *     transformer with its loads. A place no conductors were found for is left out
 * @param circuits the feeder, then the branch circuits, none where the feeder has no conductors; then those behind each
 *     transformer
 * @param shortCircuitRating short-circuit current rating of the machine at its supply terminals: the lowest rating of any
 *     protective device or load, without credit for what limits the current ahead of it; absent if nothing is rated
 * @param weakestLink what has that lowest rating
 * @param unrated what states no short-circuit current rating
 * @param sources where the table values used come from
 * @param findings remarks on the result
 * @param derivations how the important numbers came about
 */
public record FaultResult(
        List<FaultPoint> points,
        List<CircuitFault> circuits,
        @Nullable Current shortCircuitRating,
        @Nullable String weakestLink,
        List<String> unrated,
        List<Source> sources,
        List<Finding> findings,
        List<Derivation> derivations) {}
