package io.axiswright.app.project;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A revision to be added by a batch.
 *
 * @param project the project's key
 * @param branch the branch it is added to; {@code main} if absent
 * @param ifMatch the ETag of the branch with its quotes, as lists show it, or {@code *}; needed as If-Match is for a request
 *     of its own
 * @param change what makes it from the branch's latest revision
 */
record BatchedRevision(
        UUID project, @Nullable String branch, @Nullable String ifMatch, HeadChange change) {

    NamedHead head() {
        return new NamedHead(project, branch == null ? Branch.MAIN : branch, ifMatch);
    }

    /** What is asked, whatever the state it is asked for: what an idempotency key stands for. */
    BatchedRevision ofAnyState() {
        return new BatchedRevision(project, branch, null, change);
    }
}
