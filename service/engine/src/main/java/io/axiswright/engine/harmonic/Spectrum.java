package io.axiswright.engine.harmonic;

import java.util.List;
import java.util.Optional;

/**
 * Harmonics of a line current, by order from 1: complex amplitudes, their angle that against the zero of the voltage across the
 * terminals (one phase) or of the phase voltage (three phases).
 *
 * @param amplitudes of orders 1 to 50
 */
record Spectrum(List<Complex> amplitudes) {

    static final int ORDERS = 50;

    /** That of a bridge; nothing where its network is too weak for it. */
    static Optional<Spectrum> of(Bridge bridge) {
        return BridgeCycle.pulse(bridge).map(pulse -> of(bridge, pulse));
    }

    private static Spectrum of(Bridge bridge, List<Wave> pulse) {
        Complex[] amplitudes = new Complex[ORDERS];
        for (int h = 1; h <= ORDERS; h++) {
            Complex sum = Complex.ZERO;
            if (h % 2 == 1) {
                for (Wave wave : pulse) {
                    sum = sum.plus(wave.fourier(h));
                }
                sum = sum.times(pulses(bridge, h)).times(1 / Math.PI);
            }
            amplitudes[h - 1] = sum;
        }
        return new Spectrum(List.of(amplitudes));
    }

    /**
     * How the pulses of a period add up in a line. One phase: one forth, one back. Three phases: two forth, 60° apart, and two
     * back, half a period later; line-to-line voltage leads phase voltage by 30°.
     */
    private static Complex pulses(Bridge bridge, int h) {
        return bridge.threePhase()
                ? new Complex(1, 0)
                        .plus(Complex.unit(-h * Math.PI / 3))
                        .times(2)
                        .times(Complex.unit(h * Math.PI / 6))
                : new Complex(2, 0);
    }

    Complex order(int h) {
        return amplitudes.get(h - 1);
    }

    /** Effective value of all harmonics above the first over that of the first. */
    double distortion() {
        double squares = 0;
        for (int h = 2; h <= ORDERS; h++) {
            double one = order(h).magnitude();
            squares += one * one;
        }
        return Math.sqrt(squares) / order(1).magnitude();
    }
}
