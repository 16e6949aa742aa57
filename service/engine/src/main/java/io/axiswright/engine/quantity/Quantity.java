package io.axiswright.engine.quantity;

/** A number that knows its dimension; always held in the coherent SI unit. */
public sealed interface Quantity
        permits Displacement,
                Velocity,
                Acceleration,
                Jerk,
                Payload,
                Effort,
                Time,
                LinearDamping,
                RotaryDamping,
                Stiffness,
                Pressure,
                Area,
                Power,
                ApparentPower,
                Energy,
                Voltage,
                Current,
                Resistance,
                LineResistance,
                Capacitance,
                JouleIntegral,
                Frequency,
                Temperature,
                TemperatureRise,
                ThermalResistance,
                VolumeFlow,
                HeatCapacity,
                MotorConstant,
                Ratio {

    /** The value in the coherent SI unit of {@link #dimension()}. */
    double si();

    /** What kind of thing is measured. */
    Dimension dimension();

    /**
     * Guards every quantity: nothing that is not a number may enter the engine.
     *
     * @throws NotFinite if the value is NaN or infinite
     */
    static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new NotFinite(value);
        }
    }
}
