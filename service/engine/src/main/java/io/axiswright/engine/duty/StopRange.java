package io.axiswright.engine.duty;

/**
 * Upper bounds over all stops begun in an interval of instants, and over all times since their start. Rates are per second
 * of the instant at which the stop begins.
 *
 * @param speed magnitude of the motor's speed, rad/s
 * @param speedRate magnitude of its first derivative by the instant, rad/s²
 * @param speedBend magnitude of its second derivative, rad/s³
 * @param torque magnitude of the motor's torque, N·m
 * @param torqueRate magnitude of its first derivative, N·m/s
 * @param torqueBend magnitude of its second derivative where it has one, N·m/s²
 * @param torqueKink sum of the jumps of its first derivative, where a flow of power turns; 0 if none turns, N·m/s
 */
public record StopRange(
        double speed,
        double speedRate,
        double speedBend,
        double torque,
        double torqueRate,
        double torqueBend,
        double torqueKink) {

    /**
     * What the returned power −(T·w + c·T²) comes to.
     *
     * @param width from the first instant to the last, s
     * @param duration from the start of deceleration to rest, s
     * @param lossPerTorqueSquared c, W/(N·m)²
     */
    public PowerBend bend(double width, double duration, double lossPerTorqueSquared) {
        double second = torqueBend * speed
                + 2 * torqueRate * speedRate
                + torque * speedBend
                + 2 * lossPerTorqueSquared * (torqueRate * torqueRate + torque * torqueBend);
        double kink = torqueKink * (speed + 2 * lossPerTorqueSquared * torque);
        double power = width * (second * width / 8 + kink / 4);
        return new PowerBend(torque * speed, power, duration * power);
    }
}
