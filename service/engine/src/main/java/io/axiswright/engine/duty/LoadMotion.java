package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * A stretch of the load's motion in which its position is one polynomial and its speed keeps its sign.
 *
 * @param position position of the load over the time since the stretch began, m or rad
 * @param duration how long it lasts, s
 * @param direction sign of the speed
 */
record LoadMotion(Polynomial position, double duration, double direction) {

    /** A stretch of a given speed from a given position. */
    static LoadMotion of(double position, Polynomial speed, double duration, double direction) {
        return new LoadMotion(speed.antiderivative().plus(position), duration, direction);
    }

    /** When it passes a position, where it does: since it began, s. */
    double[] instantsAt(double place) {
        return position.plus(-place).signChanges(0, duration);
    }

    /** The same stretch with all positions moved. */
    LoadMotion moved(double by) {
        return new LoadMotion(position.plus(by), duration, direction);
    }
}
