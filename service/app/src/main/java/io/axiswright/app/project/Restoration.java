package io.axiswright.app.project;

import io.axiswright.engine.quantity.Bounds;

/**
 * A revision to be brought back.
 *
 * @param number its number
 * @param message why, 1 to 2000 characters
 * @param author who brings it back, 1 to 200 characters
 */
public record Restoration(@Bounds(min = 1) int number, String message, String author) {}
