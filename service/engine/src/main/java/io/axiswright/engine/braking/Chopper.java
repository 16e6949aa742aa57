package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;

/**
 * The data of the chopper and resistor at work on one bus.
 *
 * @param onEnergy bus energy at which it switches on, J; infinite if there is none
 * @param offEnergy bus energy at which it switches off, J
 * @param decay rate at which the resistor empties the bus, 2/(R·C), 1/s (energy falls twice as fast as voltage)
 * @param heatCapacity heat capacity of the resistor, J/K
 * @param coolingTime its thermal time constant, s
 */
record Chopper(double onEnergy, double offEnergy, double decay, double heatCapacity, double coolingTime) {

    /** No braking unit at all. */
    static final Chopper NONE = new Chopper(Double.POSITIVE_INFINITY, 0, 0, 1, 1);

    /** A braking unit on a bus, its resistance at the upper end of its tolerance: it brakes least there. */
    static Chopper of(BrakingUnit unit, Bus bus) {
        return of(unit, 1, bus);
    }

    /** Several alike, slaved to switch together. */
    static Chopper of(BrakingUnit unit, int count, Bus bus) {
        if (count == 0) {
            return NONE;
        }
        double resistance = unit.resistance().si() * (1 + unit.resistanceTolerance()) / count;
        return new Chopper(
                bus.energy(unit.chopperOn().si()),
                bus.energy(unit.chopperOff().si()),
                2 / (resistance * bus.capacitance()),
                unit.heatCapacity().si() * count,
                unit.heatCapacity().si() * unit.thermalResistance().si());
    }

    /**
     * The same unit switching infinitely fast at its switch-on voltage. Whatever the phase of the real one's switching, its
     * bus never stands higher than this one's: above switch-on both conduct, below this one never does.
     */
    Chopper regulating() {
        return new Chopper(onEnergy, onEnergy, decay, heatCapacity, coolingTime);
    }

    /** Whether it switches infinitely fast. */
    boolean regulates() {
        return offEnergy >= onEnergy;
    }

    /** Whether there is a braking unit. */
    boolean present() {
        return decay > 0;
    }
}
