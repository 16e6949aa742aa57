package io.axiswright.engine.duty;

import io.axiswright.engine.design.EndFixity;

/**
 * A screw of steel as a round bar between its supports: the speed at which it whirls and the force at which it buckles.
 *
 * @param root its diameter at the root of the thread, m
 * @param length the longest length without support, m
 * @param ends how its ends are held
 */
record Column(double root, double length, EndFixity ends) {

    /** Young's modulus of steel, Pa. */
    static final double STIFFNESS = 206e9;

    /** Density of steel, kg/m³. */
    static final double DENSITY = 7850;

    /**
     * (beta·l)² of the lowest bending mode: roots of the beam equation (Thomson and Dahleh, Theory of Vibration with Applications,
     * table 9.5-1 and appendix D).
     */
    double modeNumber() {
        return switch (ends) {
            case FIXED_FREE -> 3.5160152685;
            case SUPPORTED_SUPPORTED -> Math.PI * Math.PI;
            case FIXED_SUPPORTED -> 15.4182057169;
            case FIXED_FIXED -> 22.3732854481;
        };
    }

    /** Length of the half wave it buckles in, over its own length: Euler's cases; 0.699 is pi over the root of tan u = u. */
    double bucklingLengthShare() {
        return switch (ends) {
            case FIXED_FREE -> 2;
            case SUPPORTED_SUPPORTED -> 1;
            case FIXED_SUPPORTED -> 0.69915566;
            case FIXED_FIXED -> 0.5;
        };
    }

    /** w = (beta·l)²/L²·sqrt(E·I/(rho·A)), with I/A = d²/16 for a round bar, rad/s. */
    double criticalSpeed() {
        return modeNumber() / (length * length) * Math.sqrt(STIFFNESS / DENSITY) * root / 4;
    }

    /** Euler: F = pi²·E·I/(K·L)², I = pi·d⁴/64, N. */
    double bucklingForce() {
        double second = Math.PI * Math.pow(root, 4) / 64;
        double wave = bucklingLengthShare() * length;
        return Math.PI * Math.PI * STIFFNESS * second / (wave * wave);
    }
}
