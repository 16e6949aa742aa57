package io.axiswright.engine.quantity;

import java.util.function.DoubleFunction;

/**
 * The kinds of quantity the service knows, each with the record type that carries it, the least magnitude above zero and
 * the greatest that any machine, part or supply could have, in SI. The limits are generous and no rule of engineering: they
 * keep slips of the keyboard, and magnitudes whose products no computer holds, out of every member at once; {@link Bounds}
 * narrows them where a member has a range of its own.
 */
public enum Dimension {
    LENGTH(Length.class, Length::new, 1e-6, 1e4),
    ANGLE(Angle.class, Angle::new, 1e-6, 1e6),
    TIME(Time.class, Time::new, 1e-6, 1e9),
    SPEED(Speed.class, Speed::new, 1e-6, 1e4),
    ANGULAR_SPEED(AngularSpeed.class, AngularSpeed::new, 1e-6, 1e5),
    LINEAR_ACCELERATION(LinearAcceleration.class, LinearAcceleration::new, 1e-6, 1e6),
    ANGULAR_ACCELERATION(AngularAcceleration.class, AngularAcceleration::new, 1e-6, 1e8),
    LINEAR_JERK(LinearJerk.class, LinearJerk::new, 1e-6, 1e10),
    ANGULAR_JERK(AngularJerk.class, AngularJerk::new, 1e-6, 1e12),
    MASS(Mass.class, Mass::new, 1e-6, 1e6),
    INERTIA(Inertia.class, Inertia::new, 1e-12, 1e6),
    FORCE(Force.class, Force::new, 1e-6, 1e8),
    TORQUE(Torque.class, Torque::new, 1e-6, 1e6),
    LINEAR_DAMPING(LinearDamping.class, LinearDamping::new, 1e-6, 1e6),
    ROTARY_DAMPING(RotaryDamping.class, RotaryDamping::new, 1e-9, 1e6),
    STIFFNESS(Stiffness.class, Stiffness::new, 1e-6, 1e9),
    PRESSURE(Pressure.class, Pressure::new, 1, 1e12),
    AREA(Area.class, Area::new, 1e-12, 1e2),
    POWER(Power.class, Power::new, 1e-6, 1e8),
    APPARENT_POWER(ApparentPower.class, ApparentPower::new, 1e-6, 1e8),
    ENERGY(Energy.class, Energy::new, 1e-6, 1e9),
    VOLTAGE(Voltage.class, Voltage::new, 1e-3, 1e5),
    CURRENT(Current.class, Current::new, 1e-6, 1e6),
    RESISTANCE(Resistance.class, Resistance::new, 1e-6, 1e6),
    LINE_RESISTANCE(LineResistance.class, LineResistance::new, 1e-9, 1e3),
    CAPACITANCE(Capacitance.class, Capacitance::new, 1e-9, 10),
    JOULE_INTEGRAL(JouleIntegral.class, JouleIntegral::new, 1e-6, 1e12),
    FREQUENCY(Frequency.class, Frequency::new, 1e-6, 1e7),
    TEMPERATURE(Temperature.class, Temperature::new, 1, 1e4),
    TEMPERATURE_RISE(TemperatureRise.class, TemperatureRise::new, 1e-3, 1e4),
    THERMAL_RESISTANCE(ThermalResistance.class, ThermalResistance::new, 1e-6, 1e6),
    VOLUME_FLOW(VolumeFlow.class, VolumeFlow::new, 1e-6, 1e4),
    HEAT_CAPACITY(HeatCapacity.class, HeatCapacity::new, 1e-6, 1e9),
    MOTOR_CONSTANT(MotorConstant.class, MotorConstant::new, 1e-6, 1e4),
    RATIO(Ratio.class, Ratio::new, 1e-6, 1e9);

    private final Class<? extends Quantity> type;
    private final DoubleFunction<? extends Quantity> factory;
    private final double least;
    private final double most;

    <Q extends Quantity> Dimension(Class<Q> type, DoubleFunction<Q> factory, double least, double most) {
        this.type = type;
        this.factory = factory;
        this.least = least;
        this.most = most;
    }

    /** The record type that carries this dimension. */
    public Class<? extends Quantity> type() {
        return type;
    }

    /** The least magnitude above zero that has a meaning, in the coherent SI unit; the least value where zero has none. */
    public double least() {
        return least;
    }

    /** The greatest magnitude that has a meaning, in the coherent SI unit. */
    public double most() {
        return most;
    }

    /** The typed quantity of this dimension with the given value in the coherent SI unit. */
    public Quantity of(double si) {
        return factory.apply(si);
    }
}
