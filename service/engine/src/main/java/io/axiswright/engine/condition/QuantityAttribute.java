package io.axiswright.engine.condition;

import io.axiswright.engine.quantity.Dimension;

/** The numbers of a machine that a condition can compare. Counts have the unit 1. */
public enum QuantityAttribute {
    /** How many axes the machine has. */
    AXES(Reach.MACHINE, Dimension.RATIO),
    /** How many branch circuits its supply has. */
    CIRCUITS(Reach.MACHINE, Dimension.RATIO),
    /** How many gateways its control network has. */
    GATEWAYS(Reach.MACHINE, Dimension.RATIO),
    /** Nominal voltage of its mains. */
    MAINS_VOLTAGE(Reach.MACHINE, Dimension.VOLTAGE),
    /** Highest prospective fault current at its supply terminals. */
    PROSPECTIVE_FAULT_CURRENT(Reach.MACHINE, Dimension.CURRENT),
    /** What its feeder must carry. */
    FEEDER_CURRENT(Reach.MACHINE, Dimension.CURRENT),
    /** Height of the site above sea level. */
    ALTITUDE(Reach.MACHINE, Dimension.LENGTH),
    /** Highest air temperature at the motors. */
    AMBIENT(Reach.MACHINE, Dimension.TEMPERATURE),
    /** Highest air temperature inside the enclosures. */
    ENCLOSURE_AMBIENT(Reach.MACHINE, Dimension.TEMPERATURE),
    /** Greatest torque of the axis at the motor shaft. */
    AXIS_PEAK_TORQUE(Reach.AXIS, Dimension.TORQUE),
    /** Torque of the axis at the motor shaft, root of the mean square. */
    AXIS_RMS_TORQUE(Reach.AXIS, Dimension.TORQUE),
    /** Greatest speed of the axis at the motor shaft. */
    AXIS_PEAK_SPEED(Reach.AXIS, Dimension.ANGULAR_SPEED),
    /** Greatest power the motor of the axis gives to its shaft. */
    AXIS_PEAK_POWER(Reach.AXIS, Dimension.POWER),
    /** Length of the cable from the gateway to the drive unit of the axis; not known where there is no layout. */
    SPUR_LENGTH(Reach.AXIS, Dimension.LENGTH),
    /** Current the conductors and the device of the circuit must carry. */
    CIRCUIT_CURRENT(Reach.CIRCUIT, Dimension.CURRENT),
    /** Nominal voltage across the circuit. */
    CIRCUIT_VOLTAGE(Reach.CIRCUIT, Dimension.VOLTAGE),
    /** How many loads the circuit has. */
    CIRCUIT_LOADS(Reach.CIRCUIT, Dimension.RATIO),
    /** Longest route from the mains panel to a load of the circuit. */
    CIRCUIT_LENGTH(Reach.CIRCUIT, Dimension.LENGTH);

    private final Reach reach;
    private final Dimension dimension;

    QuantityAttribute(Reach reach, Dimension dimension) {
        this.reach = reach;
        this.dimension = dimension;
    }

    /** What it is an attribute of. */
    public Reach reach() {
        return reach;
    }

    /** The kind of quantity it is. */
    public Dimension dimension() {
        return dimension;
    }
}
