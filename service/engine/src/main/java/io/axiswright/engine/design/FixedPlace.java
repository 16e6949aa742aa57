package io.axiswright.engine.design;

/**
 * An axis whose gateway has to stand in a given place.
 *
 * @param axis id of the axis
 * @param place id of the place
 */
public record FixedPlace(String axis, String place) {}
