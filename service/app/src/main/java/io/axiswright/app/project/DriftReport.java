package io.axiswright.app.project;

import java.util.List;
import java.util.UUID;

/**
 * What the engine of today works out otherwise than the one that made a revision, from the same design and catalogue.
 *
 * @param project the project
 * @param number the revision's number
 * @param storedEngineVersion the engine that made the stored result
 * @param engineVersion the engine of today
 * @param compared how many values were held against each other
 * @param moved those that are not the same, in the order of the result
 */
record DriftReport(
        UUID project, int number, String storedEngineVersion, String engineVersion, int compared, List<Drift> moved) {}
