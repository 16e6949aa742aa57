package io.axiswright.engine.stopping;

/**
 * What an axis does when its power is lost.
 *
 * @param axis the axis
 * @param stopping how it comes to rest
 */
record PowerLoss(StoppingAxis axis, AxisStopping stopping) {

    static PowerLoss of(StoppingAxis axis) {
        return new PowerLoss(axis, new UncontrolledStop(axis).worst(0));
    }

    /** Whether it comes to rest at all. */
    boolean rests() {
        return stopping.stoppingTime() != null;
    }
}
