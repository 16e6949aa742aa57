package io.axiswright.engine.fault;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.hipparchus.complex.ComplexField;
import org.hipparchus.linear.Array2DRowFieldMatrix;
import org.hipparchus.linear.ArrayFieldVector;
import org.hipparchus.linear.FieldLUDecomposition;
import org.hipparchus.linear.FieldMatrix;

/**
 * A supply with every conductor as a wire of its own, solved node by node (admittance matrix, complex LU): the second route,
 * which knows nothing of loops, sequence impedances or factors like √3/2.
 *
 * <p>Node 0 is the star point of the source; wires 0 to 2 are lines, 3 is the neutral, 4 the protective conductor. Each has a
 * node at every junction of the path; the first segment of a line holds its voltage source.
 */
final class PhaseNetwork {

    private static final int WIRES = 5;
    private static final int NEUTRAL = 3;
    private static final int EARTH = 4;

    /** A dead short in ohm: small against any conductor, and not so small that rounding shows. */
    private static final double SHORT = 1e-9;

    private final Complex[] volts;
    private final List<Complex[]> segments = new ArrayList<>();

    /**
     * A supply.
     *
     * @param volts voltage of each line to the star point, as phasors
     * @param line impedance of each line up to the terminals
     * @param neutral impedance of the neutral up to the terminals
     * @param earth impedance of the protective conductor up to the terminals
     */
    PhaseNetwork(Complex[] volts, Complex line, Complex neutral, Complex earth) {
        this.volts = volts;
        add(line, neutral, earth);
    }

    /** Further conductors in series. */
    PhaseNetwork add(Complex line, Complex neutral, Complex earth) {
        segments.add(new Complex[] {line, line, line, neutral, earth});
        return this;
    }

    double threePhase() {
        return current(0, 0, 1, 2);
    }

    double lineToLine() {
        return current(0, 0, 1);
    }

    double lineToNeutral() {
        return current(0, 0, NEUTRAL);
    }

    double lineToEarth() {
        return current(0, 0, EARTH);
    }

    /** Current of a line when the ends of these wires are joined. */
    private double current(int of, int... joined) {
        int size = segments.size() * WIRES + 1;
        var matrix = new Array2DRowFieldMatrix<>(ComplexField.getInstance(), size, size);
        var injected = new ArrayFieldVector<>(ComplexField.getInstance(), size);
        for (int wire = 0; wire < WIRES; wire++) {
            int before = size - 1;
            for (int k = 0; k < segments.size(); k++) {
                Complex admittance = segments.get(k)[wire].add(SHORT).reciprocal();
                int after = k * WIRES + wire;
                branch(matrix, before, after, admittance);
                if (k == 0 && wire < volts.length) {
                    Complex source = volts[wire].multiply(admittance);
                    injected.setEntry(after, injected.getEntry(after).add(source));
                    injected.setEntry(before, injected.getEntry(before).subtract(source));
                }
                before = after;
            }
        }
        int end = (segments.size() - 1) * WIRES;
        for (int k = 1; k < joined.length; k++) {
            branch(matrix, end + joined[0], end + joined[k], new Complex(1 / SHORT));
        }
        matrix.addToEntry(size - 1, size - 1, Complex.ONE); // the star point is earth
        var potentials = new FieldLUDecomposition<>(matrix).getSolver().solve(injected);
        Complex across = potentials.getEntry(size - 1).add(volts[of]).subtract(potentials.getEntry(of));
        return across.divide(segments.getFirst()[of].add(SHORT)).norm();
    }

    private static void branch(FieldMatrix<Complex> matrix, int one, int other, Complex admittance) {
        matrix.addToEntry(one, one, admittance);
        matrix.addToEntry(other, other, admittance);
        matrix.addToEntry(one, other, admittance.negate());
        matrix.addToEntry(other, one, admittance.negate());
    }
}
