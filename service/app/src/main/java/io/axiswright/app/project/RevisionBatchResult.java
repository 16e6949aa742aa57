package io.axiswright.app.project;

import java.util.List;

/**
 * What became of a batch.
 *
 * @param items one for each revision, in their order
 */
record RevisionBatchResult(List<RevisionBatchItem> items) {}
