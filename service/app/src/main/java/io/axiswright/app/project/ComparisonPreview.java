package io.axiswright.app.project;

import io.axiswright.engine.comparison.ComparisonResult;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A revision and a design that is not stored, side by side.
 *
 * @param project the project
 * @param from number of the revision; every difference is the design that was sent minus the revision
 * @param engineVersion the engine both were studied with for the comparison
 * @param sameEngineAsStored whether the revision's stored result came from that engine too; if not, it may differ from what
 *     is compared here
 * @param comparison what would change, what would follow, and why; of the consequences those of this page
 * @param next address to which the same body is sent for the next page of consequences; absent on the last one, and where no
 *     limit is asked for
 */
record ComparisonPreview(
        UUID project,
        int from,
        String engineVersion,
        boolean sameEngineAsStored,
        ComparisonResult comparison,
        @Nullable String next) {}
