package io.axiswright.engine.containment;

import io.axiswright.engine.quantity.Length;

/**
 * A power cable that runs along a route.
 *
 * @param load id of the load it feeds; "feeder" for the feeder
 * @param circuit id of its circuit
 * @param item catalogue id of the cable
 * @param outerDiameter its outer diameter
 * @param flexible whether it may move
 * @param loadedConductors conductors in it that carry current
 */
public record RoutedCable(
        String load, String circuit, String item, Length outerDiameter, boolean flexible, int loadedConductors) {}
