package io.axiswright.engine.duty;

import io.axiswright.engine.design.EndFixity;

/**
 * A screw of steel as a round bar between its supports: the speed at which it whirls and the force at which it buckles.
 *
 * @param root its diameter at the root of the thread, m
 * @param length the longest length without support, m
 * @param ends how its ends are held
 * @param yield its yield strength, Pa; infinite where it is not known and Euler's formula is taken for any length
 */
record Column(double root, double length, EndFixity ends, double yield) {

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

    /** Half wave over radius of gyration, which is d/4 for a round bar. */
    double slenderness() {
        return bucklingLengthShare() * length / (root / 4);
    }

    /**
     * Whether it yields before it could buckle by Euler's formula: below lambda = pi·sqrt(2·E/S_y), where half the yield strength
     * is reached (Shigley, Mechanical Engineering Design, 9th ed., ex. 4-17).
     */
    boolean stout() {
        return slenderness() < Math.PI * Math.sqrt(2 * STIFFNESS / yield);
    }

    /**
     * Euler's F = pi²·E·I/(K·L)², I = pi·d⁴/64, or for a stout bar J. B. Johnson's F = A·(S_y − (S_y·lambda/(2·pi))²/E) (Shigley,
     * Mechanical Engineering Design, 8th ed., eq. 4-43), N.
     */
    double bucklingForce() {
        double lambda = slenderness();
        double section = Math.PI * root * root / 4;
        double drop = yield * lambda / (2 * Math.PI);
        return stout()
                ? section * (yield - drop * drop / STIFFNESS)
                : section * Math.PI * Math.PI * STIFFNESS / (lambda * lambda);
    }
}
