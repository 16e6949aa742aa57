package io.axiswright.app.project;

import io.axiswright.engine.study.StudyResult;

/**
 * What a study came to.
 *
 * @param engineVersion version of the engine that ran it
 * @param buildable whether the system may be built: no finding is a violation
 * @param result everything it worked out; stored as JSON
 */
public record StudyOutcome(String engineVersion, boolean buildable, StudyResult result) {}
