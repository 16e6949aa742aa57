package io.axiswright.app.project;

import io.axiswright.app.problem.Problem;
import org.jspecify.annotations.Nullable;

/**
 * What became of one revision of a batch.
 *
 * @param index its place in the batch, from 0
 * @param status the status it would have been answered with by itself
 * @param revision the revision, if it is stored
 * @param problem why it is not
 */
record RevisionBatchItem(
        int index,
        int status,
        @Nullable RevisionSummary revision,
        @Nullable Problem problem) {}
