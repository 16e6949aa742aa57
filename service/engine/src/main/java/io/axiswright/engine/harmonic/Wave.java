package io.axiswright.engine.harmonic;

/**
 * A current over an angle x of the mains from the start of a stretch: {@code c + a cos x + b sin x + p cos νx + q sin νx}.
 *
 * @param start angle of its start
 * @param length how long the stretch is, rad
 * @param nu ν, the natural frequency of chokes and capacitors over that of the mains
 */
record Wave(double start, double length, double c, double a, double b, double p, double q, double nu) {

    double at(double x) {
        return c + a * Math.cos(x) + b * Math.sin(x) + p * Math.cos(nu * x) + q * Math.sin(nu * x);
    }

    Wave times(double factor) {
        return new Wave(start, length, c * factor, a * factor, b * factor, p * factor, q * factor, nu);
    }

    /** The sum with a wave over the same stretch. */
    Wave plus(Wave other) {
        return new Wave(start, length, c + other.c, a + other.a, b + other.b, p + other.p, q + other.q, nu);
    }

    /** The same course at another angle. */
    Wave from(double other) {
        return new Wave(other, length, c, a, b, p, q, nu);
    }

    Wave cut(double end) {
        return new Wave(start, end, c, a, b, p, q, nu);
    }

    /** Its part of the integral of current times {@code e^(−jhθ)} over the period. */
    Complex fourier(int h) {
        return integral(-h)
                .times(c)
                .plus(pair(a, b, 1, h))
                .plus(pair(p, q, nu, h))
                .times(Complex.unit(-h * start));
    }

    /** That of a cos λx + b sin λx = Re((a − jb) e^(jλx)). */
    private Complex pair(double cos, double sin, double lambda, int h) {
        Complex forward = integral(lambda - h).times(new Complex(cos / 2, -sin / 2));
        Complex backward = integral(-lambda - h).times(new Complex(cos / 2, sin / 2));
        return forward.plus(backward);
    }

    /** The integral of e^(jβx) over the stretch. */
    private Complex integral(double beta) {
        double angle = beta * length;
        if (Math.abs(angle) < 1e-6) {
            return new Complex(length, angle * length / 2);
        }
        return new Complex(Math.sin(angle) / beta, (1 - Math.cos(angle)) / beta);
    }
}
