package io.axiswright.app.sizing;

import io.axiswright.engine.quantity.Count;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * The frame of systems to be worked out; each is read by itself, so that one without meaning does not spoil the others.
 *
 * @param requests the requests, or what stands for them
 */
record SystemBatch(@Count(min = 1, max = MOST) List<JsonNode> requests) {

    /** The member that is the list of requests. */
    static final String REQUESTS = "requests";

    /** So many requests a batch may have. */
    static final int MOST = 500;
}
