package io.axiswright.engine.study;

import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * The same machine in another market, and what is different there.
 *
 * @param study the whole system there; the pointers of its findings lead into the request as it was sent
 * @param circuits the circuits that are not alike: the feeder first, then those here in their order, then those only there
 * @param items what is bought in another quantity, by item: those bought here in the order of the bill, then those only there
 * @param findingsOnlyHere findings that the other market does not have: none there has the same code and subject
 * @param findingsOnlyThere findings that only the other market has
 */
public record MarketComparison(
        StudyResult study,
        List<CircuitDifference> circuits,
        List<ItemDifference> items,
        List<Finding> findingsOnlyHere,
        List<Finding> findingsOnlyThere) {}
