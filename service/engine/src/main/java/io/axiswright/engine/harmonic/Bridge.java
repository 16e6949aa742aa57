package io.axiswright.engine.harmonic;

/**
 * An uncontrolled bridge of one or three phases behind reactances, before a capacitor that a constant power discharges. Angles
 * of the mains in rad; reactances and susceptance at mains frequency.
 *
 * @param threePhase whether it has three phases
 * @param peakVoltage peak of the voltage across two of its terminals, V
 * @param lineReactance in each line of three; in the whole loop of one phase, ohm; above 0
 * @param linkReactance between bridge and capacitor, ohm
 * @param susceptance of the capacitor, S
 * @param power mean power, W
 */
record Bridge(
        boolean threePhase,
        double peakVoltage,
        double lineReactance,
        double linkReactance,
        double susceptance,
        double power) {

    /** From a pair of diodes to the next. */
    double step() {
        return threePhase ? Math.PI / 3 : Math.PI;
    }

    /** Where the voltage between old and new line turns positive, seen from the zero of the old pair's voltage. */
    double handOver() {
        return threePhase ? 2 * Math.PI / 3 : Math.PI;
    }

    /** Reactance of the path while one pair conducts. */
    double pairReactance() {
        return linkReactance + (threePhase ? 2 : 1) * lineReactance;
    }

    /** Reactance of the path while two pairs share the current. */
    double sharedReactance() {
        return linkReactance + (threePhase ? 1.5 : 0) * lineReactance;
    }

    /** Peak of the voltage on it then: the mean of both pairs' voltages, which for one phase are opposite. */
    double sharedPeak() {
        return threePhase ? Math.sqrt(0.75) * peakVoltage : 0;
    }

    /** How far that lags the old pair's voltage. */
    double sharedLag() {
        return threePhase ? Math.PI / 6 : 0;
    }
}
