package io.axiswright.app.project;

import io.axiswright.engine.comparison.ComparisonResult;
import java.util.UUID;

/**
 * Two revisions of a project side by side.
 *
 * @param project the project
 * @param from number of the first revision; every difference is the second minus the first
 * @param to number of the second revision
 * @param engineVersion the engine both were studied with for the comparison
 * @param sameEngineAsStored whether both stored results came from that engine too; if not, they may differ from what is
 *     compared here
 * @param comparison what changed, what followed, and why
 */
record RevisionComparison(
        UUID project,
        int from,
        int to,
        String engineVersion,
        boolean sameEngineAsStored,
        ComparisonResult comparison) {}
