package io.axiswright.engine.braking;

/**
 * The electrical data of one DC bus. Its state is the energy E = ½·C·V² of its capacitors.
 *
 * @param capacitance capacitance of all drive units on it, F
 * @param floorEnergy energy at the voltage the rectifier keeps up, J
 * @param tripEnergy energy at the voltage at which the first drive unit trips, J
 */
record Bus(double capacitance, double floorEnergy, double tripEnergy) {

    /** A bus by its voltages in V. */
    static Bus of(double capacitance, double floorVoltage, double tripVoltage) {
        return new Bus(capacitance, energy(capacitance, floorVoltage), energy(capacitance, tripVoltage));
    }

    /** Energy at a voltage, J. */
    double energy(double voltage) {
        return energy(capacitance, voltage);
    }

    /** Voltage at an energy, V. */
    double voltage(double energy) {
        return Math.sqrt(2 * energy / capacitance);
    }

    private static double energy(double capacitance, double voltage) {
        return capacitance * voltage * voltage / 2;
    }
}
