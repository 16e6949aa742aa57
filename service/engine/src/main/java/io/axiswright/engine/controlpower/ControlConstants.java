package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.ResourceTable;
import java.util.Map;
import java.util.Objects;

/** What this discipline takes as given, read from its table; the table says where each value comes from. */
final class ControlConstants {

    private static final Map<String, Double> TABLE = ResourceTable.constants("/controlpower/constants.csv");

    /** Resistivity of annealed copper at 20 °C, Ω·m. */
    static final double COPPER_RESISTIVITY = value("copperResistivity") * 1e-6;
    /** Resistance of a stranded conductor of nominal size over that of solid copper. */
    static final double STRANDING = value("strandingAllowance");
    /** How much hotter than the air a conductor is taken to be, K. */
    static final double CONDUCTOR_RISE = value("conductorRise");
    /** Voltage at which brakes state their power, V. */
    static final double NOMINAL = value("nominalVoltage");
    /** Lower end of the band for programmable equipment, V. */
    static final double BAND_LOW = value("bandLow");
    /** Upper end of that band, V. */
    static final double BAND_HIGH = value("bandHigh");
    /** Interruption to ride through, s. */
    static final double DROP_OUT = value("dropOut");
    /** Longest a short circuit of an output circuit may last, s. */
    static final double CLEARING_TIME = value("clearingTime");
    /** How far the mains may lie from a supply's rated voltage, as a fraction of it. */
    static final double MAINS_MATCH = value("mainsMatch");

    private ControlConstants() {}

    private static double value(String name) {
        return Objects.requireNonNull(TABLE.get(name), name);
    }
}
