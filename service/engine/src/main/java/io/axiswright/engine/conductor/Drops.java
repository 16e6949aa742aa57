package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Limits;
import org.jspecify.annotations.Nullable;

/** Voltage drop of a circuit against its limit. */
final class Drops {

    private Drops() {}

    static double volts(Circuit circuit, Impedance impedance) {
        return VoltageDrop.volts(
                circuit.kind(),
                circuit.designCurrent().si(),
                impedance,
                circuit.powerFactor(),
                circuit.length().si());
    }

    static @Nullable Breach breach(Circuit circuit, Impedance impedance, String clause) {
        double volts = volts(circuit, impedance);
        double most = circuit.voltageDropLimit() * circuit.voltage().si();
        return Limits.within(volts, most)
                ? null
                : new Breach(Limit.VOLTAGE_DROP, new Voltage(volts), new Voltage(most), clause);
    }
}
