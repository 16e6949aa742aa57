package io.axiswright.engine.harmonic;

import java.util.ArrayList;
import java.util.List;

/** A three-phase bridge whose diodes open and close gradually, integrated in small steps. */
final class SmoothBridge {

    private static final int STEPS = 60_000;
    private static final int PERIODS = 12;

    private final double peak;
    private final double reactance;
    private final double susceptance;
    private final double width;
    private double load;

    private SmoothBridge(double peak, double reactance, double susceptance, double width) {
        this.width = width;
        this.peak = peak;
        this.reactance = reactance;
        this.susceptance = susceptance;
    }

    static Spectrum spectrum(double peak, double reactance, double susceptance, double power, double width) {
        var bridge = new SmoothBridge(peak, reactance, susceptance, width);
        double[] state = {0, 0, 0, 1.6 * peak};
        double step = 2 * Math.PI / STEPS;
        bridge.load = power / state[3];
        double[] re = new double[Spectrum.ORDERS];
        double[] im = new double[Spectrum.ORDERS];
        for (int period = 0; period < PERIODS; period++) {
            double mean = 0;
            for (int k = 0; k < STEPS; k++) {
                mean += state[3] / STEPS;
                if (period == PERIODS - 1 && k % 20 == 0) {
                    for (int h = 1; h <= Spectrum.ORDERS; h++) {
                        re[h - 1] += state[0] * Math.cos(h * k * step) * 40 / STEPS;
                        im[h - 1] -= state[0] * Math.sin(h * k * step) * 40 / STEPS;
                    }
                }
                state = bridge.next(k * step, state, step);
            }
            bridge.load = power / mean;
        }
        List<Complex> amplitudes = new ArrayList<>();
        for (int h = 0; h < Spectrum.ORDERS; h++) {
            amplitudes.add(new Complex(re[h], im[h]));
        }
        return new Spectrum(amplitudes);
    }

    private double[] next(double angle, double[] y, double step) {
        double[] one = slope(angle, y);
        double[] two = slope(angle + step / 2, moved(y, one, step / 2));
        double[] three = slope(angle + step / 2, moved(y, two, step / 2));
        double[] four = slope(angle + step, moved(y, three, step));
        double[] after = new double[4];
        for (int k = 0; k < 4; k++) {
            after[k] = y[k] + step / 6 * (one[k] + 2 * two[k] + 2 * three[k] + four[k]);
        }
        return after;
    }

    private static double[] moved(double[] y, double[] slope, double by) {
        double[] moved = new double[4];
        for (int k = 0; k < 4; k++) {
            moved[k] = y[k] + by * slope[k];
        }
        return moved;
    }

    private double[] slope(double angle, double[] y) {
        double[] across = new double[3];
        double neutral = 0;
        double direct = 0;
        for (int k = 0; k < 3; k++) {
            double sign = Math.tanh(y[k] / width);
            across[k] = peak * Math.sin(angle - 2 * Math.PI / 3 * k) - y[3] / 2 * sign;
            neutral += across[k] / 3;
            direct += y[k] * sign / 2;
        }
        return new double[] {
            (across[0] - neutral) / reactance,
            (across[1] - neutral) / reactance,
            (across[2] - neutral) / reactance,
            (direct - load) / susceptance
        };
    }
}
