package io.axiswright.engine.harmonic;

/**
 * Current and voltage of a reactance X in series with a capacitor of susceptance B that a constant current discharges, driven
 * by {@code A sin φ}: {@code X i' = A sin φ − u, B u' = i − I}, solved exactly.
 */
final class Oscillation {

    /** Nearer to resonance than this the closed form loses its digits; the capacitor is taken as so much larger. */
    private static final double RESONANCE = 1e-6;

    private final double start;
    private final double nu;
    private final double susceptance;
    private final double drive;
    private final double cos;
    private final double sin;
    private final double load;

    Oscillation(
            double reactance,
            double susceptance,
            double peak,
            double start,
            double voltage,
            double current,
            double load) {
        double square = 1 / (reactance * susceptance);
        if (Math.abs(square - 1) < RESONANCE) {
            square = 1 - RESONANCE;
        }
        this.start = start;
        this.nu = Math.sqrt(square);
        this.susceptance = 1 / (reactance * square);
        this.drive = peak * square / (square - 1);
        this.load = load;
        this.cos = voltage - drive * Math.sin(start);
        this.sin = ((current - load) / this.susceptance - drive * Math.cos(start)) / nu;
    }

    /** The voltage of the capacitor so long after the start. */
    double voltage(double x) {
        return drive * Math.sin(start + x) + cos * Math.cos(nu * x) + sin * Math.sin(nu * x);
    }

    /** The current over a stretch of that length. */
    Wave current(double length) {
        return new Wave(
                start,
                length,
                load,
                susceptance * drive * Math.cos(start),
                -susceptance * drive * Math.sin(start),
                susceptance * nu * sin,
                -susceptance * nu * cos,
                nu);
    }
}
