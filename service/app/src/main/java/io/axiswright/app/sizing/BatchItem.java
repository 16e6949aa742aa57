package io.axiswright.app.sizing;

import io.axiswright.app.problem.Problem;
import io.axiswright.engine.study.StudyResult;
import org.jspecify.annotations.Nullable;

/**
 * The answer to one request of a batch: a result or a problem.
 *
 * @param index place of the request in the batch, from 0
 * @param status the status it would have been answered with by itself
 * @param result the results of all disciplines, if it has a meaning
 * @param problem why it has none
 */
record BatchItem(
        int index,
        int status,
        @Nullable StudyResult result,
        @Nullable Problem problem) {}
