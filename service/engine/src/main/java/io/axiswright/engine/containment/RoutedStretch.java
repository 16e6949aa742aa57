package io.axiswright.engine.containment;

import io.axiswright.engine.design.CableRoute;
import java.util.List;

/**
 * A route with the cables along it.
 *
 * @param pointer JSON Pointer to the route in the caller's request
 * @param route the route
 * @param cables the power cables along it
 * @param unknown ids of loads along it that no cable of the catalogue serves
 */
public record RoutedStretch(String pointer, CableRoute route, List<RoutedCable> cables, List<String> unknown) {}
