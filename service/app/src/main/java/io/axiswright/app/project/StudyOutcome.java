package io.axiswright.app.project;

/**
 * What a study came to.
 *
 * @param engineVersion version of the engine that ran it
 * @param buildable whether the system may be built: no finding is a violation
 * @param result everything it worked out; stored as JSON
 */
public record StudyOutcome(String engineVersion, boolean buildable, Object result) {}
