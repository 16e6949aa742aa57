package io.axiswright.app.sizing;

import java.util.List;

/**
 * The answers to a batch.
 *
 * @param items one for each request, in their order
 */
record BatchResult(List<BatchItem> items) {}
