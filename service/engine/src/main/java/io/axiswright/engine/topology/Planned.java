package io.axiswright.engine.topology;

import org.jspecify.annotations.Nullable;

/**
 * What was planned for a problem.
 *
 * @param layout the layout; null if none was found
 * @param bound proven lower bound of the cost of every layout, in the problem's money unit
 * @param result the same as callers are told it
 */
record Planned(LayoutProblem problem, @Nullable Layout layout, long bound, TopologyResult result) {}
