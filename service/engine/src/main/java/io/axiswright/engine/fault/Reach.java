package io.axiswright.engine.fault;

/**
 * A place on the distribution by the conductors to it.
 *
 * @param cold the conductors at 20 °C, as they are in the highest fault
 * @param hot the conductors at their highest temperature in operation, as they are in the lowest
 */
record Reach(Path cold, Path hot) {

    Reach then(Reach further) {
        return new Reach(cold.then(further.cold), hot.then(further.hot));
    }
}
