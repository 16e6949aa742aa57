package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Enclosure.Range;
import io.axiswright.engine.numeric.Polynomial;

/**
 * A piece of the cycle, or part of one, in which stops begin.
 *
 * @param piece the piece
 * @param speed speed of the load over the time since it began, m/s or rad/s
 * @param acceleration its derivative
 * @param hardestJerk the greatest magnitude of its second derivative in that part
 * @param direction sign of the speed; 0 at rest
 */
record StopStretch(LoadPiece piece, Polynomial speed, Polynomial acceleration, double hardestJerk, double direction) {

    /** The whole of a piece. */
    static StopStretch of(LoadPiece piece) {
        return of(piece, 0, piece.duration());
    }

    /** What lies between two times since the start of a piece, s. */
    static StopStretch of(LoadPiece piece, double from, double to) {
        Polynomial speed = piece.position().derivative();
        Polynomial acceleration = speed.derivative();
        return new StopStretch(
                piece,
                speed,
                acceleration,
                acceleration.derivative().largestMagnitude(from, to),
                Math.signum(speed.at((from + to) / 2)));
    }

    /** The speed over a time and what lies within a half width of it; its slope is the acceleration. */
    Enclosure speed(double time, double half) {
        double middle = acceleration.at(time);
        double gain = hardestJerk * half;
        double most = (Math.abs(middle) + gain / 2) * half;
        double here = speed.at(time);
        return new Enclosure(here - most, here + most, new Range(middle - gain, middle + gain), Range.NONE);
    }

    /** The position over the same, its slope being that speed. */
    Enclosure position(double time, double half, Enclosure speed) {
        double here = piece.position().at(time);
        double most = Math.max(Math.abs(speed.low()), Math.abs(speed.high())) * half;
        return new Enclosure(here - most, here + most, new Range(speed.low(), speed.high()), Range.NONE);
    }
}
