package io.axiswright.app.project;

import io.axiswright.engine.quantity.Bounds;

/**
 * A branch to be made.
 *
 * @param name its name: 1 to 50 lower-case letters, digits and hyphens, a letter or digit first
 * @param start number of the revision it sets out from
 */
public record NewBranch(String name, @Bounds(min = 1) int start) {}
