package io.axiswright.app.project;

import io.axiswright.engine.comparison.ComparisonResult;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Two revisions of a project side by side.
 *
 * @param project the project
 * @param from number of the first revision; every difference is the second minus the first
 * @param to number of the second revision
 * @param engineVersion the engine both were studied with for the comparison
 * @param sameEngineAsStored whether both stored results came from that engine too; if not, they may differ from what is
 *     compared here
 * @param drift addresses at which is told how far the stored results of another engine are from what is compared here; empty
 *     if there are none
 * @param comparison what changed, what followed, and why; of the consequences those of this page
 * @param next address of the next page of consequences; absent on the last one, and where no limit is asked for
 */
record RevisionComparison(
        UUID project,
        int from,
        int to,
        String engineVersion,
        boolean sameEngineAsStored,
        List<String> drift,
        ComparisonResult comparison,
        @Nullable String next) {}
