package io.axiswright.engine.braking;

/**
 * A stretch of the power to one bus over which the power is one polynomial and neither it nor its slope changes sign; so the
 * energy is monotone while no chopper works, and has at most one turning point while one does. As a {@link Curve} it is the
 * returned energy (slope: power) over the local time.
 */
final class PowerSegment implements Curve {

    private final double origin;
    private final double from;
    private final double to;
    private final double[] power;
    private final double[] energy;
    private final int sign;

    /**
     * A segment.
     *
     * @param origin instant of local time 0, s
     * @param from local time of its start, s
     * @param to local time of its end, s
     * @param power coefficients of the power in W over local time, lowest power first; not copied
     * @param energy coefficients of its antiderivative; not copied
     */
    PowerSegment(double origin, double from, double to, double[] power, double[] energy) {
        this.origin = origin;
        this.from = from;
        this.to = to;
        this.power = power;
        this.energy = energy;
        this.sign = (int) Math.signum(Horner.at(power, (from + to) / 2));
    }

    /** Local time of the start, s. */
    double from() {
        return from;
    }

    /** Local time of the end, s. */
    double to() {
        return to;
    }

    /** The instant of a local time, s. */
    double instant(double local) {
        return origin + local;
    }

    /** The local time of an instant, s. */
    double localOf(double instant) {
        return instant - origin;
    }

    /** 1 where the axes return power, −1 where they take it, 0 where neither. */
    int sign() {
        return sign;
    }

    /** Whether the power is the same all along. */
    boolean constant() {
        return power.length == 1;
    }

    /** Whether it is the same polynomial as the segment before it. */
    boolean continues(PowerSegment before) {
        return power == before.power;
    }

    /** The local time after a given one at which the power, monotone here, reaches a value that lies between. */
    double instantOfPower(double value, double after) {
        return Curve.reach(new Horner.Graph(power), value, after, to);
    }

    /**
     * The local time after a given one at which so much energy has come back, or, negative, has been taken; at most that of
     * the end. Closed form for constant and linear power.
     */
    double timeOfEnergy(double joules, double after) {
        if (power.length > 2) {
            return Curve.reach(this, value(after) + joules, after, to);
        }
        double now = slope(after);
        double twice = 2 * joules;
        double root = power.length == 1 ? Math.abs(now) : Math.sqrt(Math.max(0, now * now + twice * power[1]));
        return Math.min(to, after + twice / (now + Math.copySign(root, joules)));
    }

    /** No slope of the power between two local times is steeper than this, W/s. */
    double steepest(double start, double end) {
        return Horner.largestMagnitude(Horner.derivative(power), start, end);
    }

    /** No curvature of the power between two local times is sharper than this, W/s². */
    double sharpest(double start, double end) {
        return Horner.largestMagnitude(Horner.derivative(Horner.derivative(power)), start, end);
    }

    /** Energy returned from one local time to another, J. */
    double energy(double start, double end) {
        return Horner.at(energy, end) - Horner.at(energy, start);
    }

    /** Energy returned over the whole segment, J. */
    double energy() {
        return energy(from, to);
    }

    /** Coefficients of the power over the time since a local time. */
    double[] powerFrom(double local) {
        double[] shifted = power.clone();
        Horner.shift(shifted, local);
        return shifted;
    }

    @Override
    public double value(double local) {
        return Horner.at(energy, local);
    }

    @Override
    public double slope(double local) {
        return Horner.at(power, local);
    }
}
