package io.axiswright.engine.design;

/** How the length of a cable route follows from two positions. */
public enum RouteMetric {
    /** Along the axes of the machine frame. */
    RECTILINEAR,
    /** As the crow flies. */
    STRAIGHT
}
