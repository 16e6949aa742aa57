package io.axiswright.app.project;

import org.jspecify.annotations.Nullable;

/**
 * A project to be opened.
 *
 * @param name the caller's name for it, 1 to 200 characters
 * @param description what it is about, at most 2000 characters
 */
public record NewProject(String name, @Nullable String description) {}
