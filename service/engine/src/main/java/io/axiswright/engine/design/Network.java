package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * The control network the axes hang on.
 *
 * @param host the controlling computer
 * @param places where gateways may stand
 * @param route how cable lengths follow from positions
 */
public record Network(Host host, @Count(min = 1, max = 256) List<Place> places, RouteRule route) {}
