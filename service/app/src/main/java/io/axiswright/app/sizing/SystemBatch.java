package io.axiswright.app.sizing;

import io.axiswright.engine.quantity.Count;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * Systems to be worked out; each is read by itself, so that one without meaning does not spoil the others.
 *
 * @param requests the requests, as they came
 */
record SystemBatch(@Count(min = 1, max = 500) List<JsonNode> requests) {}
