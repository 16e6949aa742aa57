package io.axiswright.engine.stopping;

import java.util.function.DoubleFunction;

/**
 * A stretch of coasting or braking under J·dw/dt + k·w + c = 0, in closed form: the acceleration dies away as e^(−rate·t).
 *
 * @param speed speed at its start, rad/s
 * @param acceleration acceleration there, rad/s²
 * @param inertia J, kg·m²
 * @param rate k/J, 1/s; 0 without viscous friction
 * @param turning when the power through some link turns and with it the law, s; infinite if it never does
 * @param onwards the motion after that, from the speed reached
 */
record Glide(
        double speed, double acceleration, double inertia, double rate, double turning, DoubleFunction<Glide> onwards) {

    /** The time t with (1 − e^(−rate·t))/rate = x; infinite if there is none. */
    static double instant(double x, double rate) {
        if (!(x > 0) || rate * x >= 1) {
            return Double.POSITIVE_INFINITY;
        }
        return rate == 0 ? x : -Math.log1p(-rate * x) / rate;
    }

    /** k, N·m·s. */
    double viscous() {
        return rate * inertia;
    }

    /** c, N·m. */
    double torque() {
        return -inertia * acceleration - viscous() * speed;
    }

    /** When it comes to rest, s; infinite if it never does. */
    double rest() {
        return instant(-speed / acceleration, rate);
    }

    /** Speed after a time, rad/s. */
    double speedAt(double t) {
        double x = rate * t;
        return speed + acceleration * t * (x == 0 ? 1 : -Math.expm1(-x) / x);
    }

    /** Angle turned after a time, rad. */
    double angleAt(double t) {
        return speed * t + acceleration * t * t * second(rate * t);
    }

    /** (x − 1 + e^(−x))/x²; as a series where the difference would lose its digits. */
    private static double second(double x) {
        if (x > 0.5) {
            return (x + Math.expm1(-x)) / (x * x);
        }
        double sum = 0;
        double term = 0.5;
        for (int n = 3; Math.abs(term) > 1e-18; n++) {
            sum += term;
            term *= -x / n;
        }
        return sum;
    }
}
