package io.axiswright.app.project;

import io.axiswright.engine.quantity.Count;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * Revisions to be added.
 *
 * @param revisions the revisions
 */
record RevisionBatch(@Count(min = 1, max = MOST) List<BatchedRevision> revisions) {

    /** The member that is the list of revisions. */
    static final String REVISIONS = "revisions";

    /** So many revisions a batch may have. */
    static final int MOST = 500;

    /**
     * What is read of it at once; each revision is read by itself, so that one without meaning does not spoil the others.
     *
     * @param revisions what stands for the revisions
     */
    record Frame(@Count(min = 1, max = MOST) List<JsonNode> revisions) {}
}
