package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * The electrical input of a drive unit over a cycle. Shaft power, copper loss and standby loss add up to it; while the sum
 * is negative the rectifier takes nothing and nothing is credited.
 *
 * @param mean mean input, W
 * @param rms rms input, W
 */
record InputCurrent(double mean, double rms) {

    /**
     * Adds up a course exactly.
     *
     * @param course the course at the motor shaft
     * @param motorConstant Km, N·m/W^0.5
     * @param standbyLoss loss that does not depend on the load, W
     */
    static InputCurrent of(Course course, double motorConstant, double standbyLoss) {
        double sum = 0;
        double squares = 0;
        double loss = 1 / (motorConstant * motorConstant);
        for (Course.Piece piece : course.pieces()) {
            // over 0 … 1: coefficients of a sliver of a piece would overflow when squared twice
            double length = piece.duration();
            Polynomial torque = piece.torque().stretched(1 / length);
            Polynomial input = torque.times(piece.speed().stretched(1 / length))
                    .plus(torque.times(torque).times(loss))
                    .plus(standbyLoss);
            double left = 0;
            for (double right : input.signStretches(0, 1)) {
                if (input.at((left + right) / 2) > 0) {
                    sum += input.integral(left, right) * length;
                    squares += input.times(input).integral(left, right) * length;
                }
                left = right;
            }
        }
        double period = course.duration();
        return new InputCurrent(sum / period, Math.sqrt(squares / period));
    }

    /**
     * The rms input current: the rated one in proportion to rms input over rated input, more at low line where the unit
     * draws the same power from less voltage, and never above the rated current, to which a drive unit limits itself
     * (common practice, no source).
     *
     * @param rated rated input current, A
     * @param ratedInput input at the rated current, W
     * @param lineFactor lowest voltage over rated voltage, at most 1
     */
    double current(double rated, double ratedInput, double lineFactor) {
        return ratedInput <= 0 ? rated : Math.min(rated, rated * rms / ratedInput / lineFactor);
    }
}
