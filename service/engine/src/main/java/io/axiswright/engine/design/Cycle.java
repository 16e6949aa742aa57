package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * What an axis does over and over.
 *
 * @param segments moves and dwells in order
 */
public record Cycle(@Count(min = 1, max = 1000) List<Segment> segments) {}
