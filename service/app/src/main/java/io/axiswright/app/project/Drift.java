package io.axiswright.app.project;

import io.axiswright.engine.comparison.ChangeKind;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * A value of a result that the engine of today works out otherwise.
 *
 * @param path where in the result; list elements are named by their id
 * @param kind what happened to it
 * @param before as stored; absent if it was not there
 * @param after as of today; absent if it is no longer there
 * @param difference today's minus the stored one, in the unit of both; absent where they are not two numbers
 */
record Drift(
        String path,
        ChangeKind kind,
        @Nullable JsonNode before,
        @Nullable JsonNode after,
        @Nullable JsonNode difference) {}
