package io.axiswright.app.catalogues;

import io.axiswright.engine.quantity.Bounds;

/**
 * Which catalogue a revision buys from.
 *
 * @param name the catalogue's name
 * @param version its version
 */
public record CatalogueReference(
        String name, @Bounds(min = 1) int version) {}
