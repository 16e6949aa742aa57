package io.axiswright.engine.conductor;

/** Voltage drop along a circuit. */
final class VoltageDrop {

    private static final double SQRT_3 = Math.sqrt(3);

    private VoltageDrop() {}

    /**
     * ΔU = 2·I·R·L (direct current), 2·I·(R·cos φ + X·sin φ)·L (one phase), √3·I·(R·cos φ + X·sin φ)·L (three phases, line
     * to line): IEC 60364-5-52 Annex G; NFPA 70 Chapter 9 Table 9 note 2.
     *
     * @param kind kind of circuit
     * @param amperes load current in A
     * @param impedance hot conductor
     * @param powerFactor cos φ, lagging
     * @param metres one-way length in m
     * @return the drop in V
     */
    static double volts(CircuitKind kind, double amperes, Impedance impedance, double powerFactor, double metres) {
        return switch (kind) {
            case DC -> 2 * amperes * impedance.resistance() * metres;
            case AC_ONE_PHASE -> 2 * amperes * alongTheLoad(impedance, powerFactor) * metres;
            case AC_THREE_PHASE -> SQRT_3 * amperes * alongTheLoad(impedance, powerFactor) * metres;
        };
    }

    /** The formula as a handbook writes it. */
    static String formula(CircuitKind kind) {
        return switch (kind) {
            case DC -> "2 · I · R · L";
            case AC_ONE_PHASE -> "2 · I · (R · cos φ + X · sin φ) · L";
            case AC_THREE_PHASE -> "√3 · I · (R · cos φ + X · sin φ) · L";
        };
    }

    private static double alongTheLoad(Impedance impedance, double powerFactor) {
        double sine = Math.sqrt(1 - powerFactor * powerFactor);
        return impedance.resistance() * powerFactor + impedance.reactance() * sine;
    }
}
