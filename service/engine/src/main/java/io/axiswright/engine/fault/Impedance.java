package io.axiswright.engine.fault;

import io.axiswright.engine.standard.LineImpedance;

/**
 * An impedance.
 *
 * @param resistance in ohm
 * @param reactance in ohm
 */
record Impedance(double resistance, double reactance) {

    static final Impedance NONE = new Impedance(0, 0);

    /** A conductor of that many metres. */
    static Impedance of(LineImpedance perMetre, double metres) {
        return new Impedance(
                perMetre.resistance().si() * metres, perMetre.reactance().si() * metres);
    }

    /** An impedance of that magnitude and that ratio of resistance to reactance. */
    static Impedance ofRatio(double magnitude, double resistanceOverReactance) {
        double reactance = magnitude / Math.hypot(1, resistanceOverReactance);
        return new Impedance(resistanceOverReactance * reactance, reactance);
    }

    Impedance plus(Impedance other) {
        return new Impedance(resistance + other.resistance, reactance + other.reactance);
    }

    double magnitude() {
        return Math.hypot(resistance, reactance);
    }
}
