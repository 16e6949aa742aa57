package io.axiswright.engine.harmonic;

/** A complex number. */
record Complex(double re, double im) {

    static final Complex ZERO = new Complex(0, 0);

    /** e to the power of j times the angle. */
    static Complex unit(double angle) {
        return new Complex(Math.cos(angle), Math.sin(angle));
    }

    Complex plus(Complex other) {
        return new Complex(re + other.re, im + other.im);
    }

    Complex times(Complex other) {
        return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    Complex times(double factor) {
        return new Complex(re * factor, im * factor);
    }

    double magnitude() {
        return Math.hypot(re, im);
    }
}
