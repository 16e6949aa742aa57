package io.axiswright.engine.wiring;

import io.axiswright.engine.quantity.Length;

/**
 * A conduit that cables are drawn through.
 *
 * @param route id of the route it encloses
 * @param innerDiameter what of a cable is no wider passes it
 * @param pointer JSON Pointer, in the request, to what encloses the route
 */
public record ConduitOnWay(String route, Length innerDiameter, String pointer) {}
