package io.axiswright.engine.design;

/** How the length of a cable route follows from two positions. */
public enum RouteMetric {
    /** Along the axes of the machine frame. */
    RECTILINEAR,
    /** As the crow flies. */
    STRAIGHT;

    /** The way from one position to the other, m. */
    double way(Position a, Position b) {
        double dx = Math.abs(a.x().si() - b.x().si());
        double dy = Math.abs(a.y().si() - b.y().si());
        double dz = Math.abs(a.z().si() - b.z().si());
        return switch (this) {
            case RECTILINEAR -> dx + dy + dz;
            case STRAIGHT -> Math.sqrt(dx * dx + dy * dy + dz * dz);
        };
    }
}
