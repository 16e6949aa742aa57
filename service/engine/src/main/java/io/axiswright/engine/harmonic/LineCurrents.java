package io.axiswright.engine.harmonic;

import java.util.Arrays;
import java.util.List;

/** The currents of all orders in every line, added up with their angles; complex amplitudes against the first line's voltage. */
final class LineCurrents {

    private final List<String> lines;
    private final Complex[][] amplitudes;

    LineCurrents(List<String> lines) {
        this.lines = lines;
        this.amplitudes = new Complex[lines.size()][Spectrum.ORDERS];
        for (Complex[] line : amplitudes) {
            Arrays.fill(line, Complex.ZERO);
        }
    }

    /** Angle of the phase voltage of a line: thirds of a turn on three lines, half a turn on two. */
    private double angle(int line) {
        return -2 * Math.PI * line / lines.size();
    }

    /** Adds a load: in the lines of three phases one after the other, or forth in one line and back in the other or in neutral. */
    void add(Spectrum spectrum, List<String> of) {
        if (of.size() == 3) {
            for (int line = 0; line < lines.size(); line++) {
                put(line, spectrum, angle(line), 1);
            }
            return;
        }
        int forth = lines.indexOf(of.getFirst());
        if (of.size() == 1) {
            put(forth, spectrum, angle(forth), 1);
            return;
        }
        int back = lines.indexOf(of.get(1));
        Complex across =
                Complex.unit(angle(forth)).plus(Complex.unit(angle(back)).times(-1));
        double lead = Math.atan2(across.im(), across.re());
        put(forth, spectrum, lead, 1);
        put(back, spectrum, lead, -1);
    }

    private void put(int line, Spectrum spectrum, double lead, int sign) {
        for (int h = 1; h <= Spectrum.ORDERS; h++) {
            amplitudes[line][h - 1] = amplitudes[line][h - 1].plus(
                    spectrum.order(h).times(Complex.unit(h * lead)).times(sign));
        }
    }

    /** Effective value of an order in a line, A. */
    double effective(int line, int order) {
        return amplitudes[line][order - 1].magnitude() / Math.sqrt(2);
    }
}
