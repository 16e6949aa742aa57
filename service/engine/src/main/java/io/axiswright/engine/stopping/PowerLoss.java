package io.axiswright.engine.stopping;

/**
 * What an axis does when its power is lost.
 *
 * @param axis the axis
 * @param worst how it comes to rest
 */
record PowerLoss(StoppingAxis axis, WorstStops worst) {

    static PowerLoss of(StoppingAxis axis) {
        return new PowerLoss(axis, new UncontrolledStop(axis).worst(0));
    }

    /** What that comes to. */
    AxisStopping stopping() {
        return worst.stopping();
    }

    /** Whether it comes to rest at all. */
    boolean rests() {
        return stopping().stoppingTime() != null;
    }
}
