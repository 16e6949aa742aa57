package io.axiswright.app.project;

/**
 * A label to be put to a revision.
 *
 * @param author who puts it there, 1 to 200 characters
 */
public record NewLabel(String author) {}
