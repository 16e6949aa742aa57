package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * How a crank turns over a piece of its cycle.
 *
 * @param angle its angle over the time since the piece began, rad
 * @param speed its speed, rad/s
 * @param acceleration its acceleration, rad/s²
 * @param direction sign of its speed; 0 at rest
 * @param middle its angle half way
 */
record CrankState(Polynomial angle, Polynomial speed, Polynomial acceleration, double direction, double middle) {

    static CrankState of(LoadPiece piece) {
        Polynomial speed = piece.position().derivative();
        double middle = piece.duration() / 2;
        return new CrankState(
                piece.position(),
                speed,
                speed.derivative(),
                Math.signum(speed.at(middle)),
                piece.position().at(middle));
    }
}
