package io.axiswright.engine.quantity;

import java.util.function.DoubleFunction;

/** The kinds of quantity the service knows, each with the record type that carries it. */
public enum Dimension {
    LENGTH(Length.class, Length::new),
    ANGLE(Angle.class, Angle::new),
    TIME(Time.class, Time::new),
    SPEED(Speed.class, Speed::new),
    ANGULAR_SPEED(AngularSpeed.class, AngularSpeed::new),
    LINEAR_ACCELERATION(LinearAcceleration.class, LinearAcceleration::new),
    ANGULAR_ACCELERATION(AngularAcceleration.class, AngularAcceleration::new),
    LINEAR_JERK(LinearJerk.class, LinearJerk::new),
    ANGULAR_JERK(AngularJerk.class, AngularJerk::new),
    MASS(Mass.class, Mass::new),
    INERTIA(Inertia.class, Inertia::new),
    FORCE(Force.class, Force::new),
    TORQUE(Torque.class, Torque::new),
    LINEAR_DAMPING(LinearDamping.class, LinearDamping::new),
    STIFFNESS(Stiffness.class, Stiffness::new),
    PRESSURE(Pressure.class, Pressure::new),
    AREA(Area.class, Area::new),
    POWER(Power.class, Power::new),
    APPARENT_POWER(ApparentPower.class, ApparentPower::new),
    ENERGY(Energy.class, Energy::new),
    VOLTAGE(Voltage.class, Voltage::new),
    CURRENT(Current.class, Current::new),
    RESISTANCE(Resistance.class, Resistance::new),
    LINE_RESISTANCE(LineResistance.class, LineResistance::new),
    CAPACITANCE(Capacitance.class, Capacitance::new),
    JOULE_INTEGRAL(JouleIntegral.class, JouleIntegral::new),
    FREQUENCY(Frequency.class, Frequency::new),
    TEMPERATURE(Temperature.class, Temperature::new),
    TEMPERATURE_RISE(TemperatureRise.class, TemperatureRise::new),
    THERMAL_RESISTANCE(ThermalResistance.class, ThermalResistance::new),
    HEAT_CAPACITY(HeatCapacity.class, HeatCapacity::new),
    MOTOR_CONSTANT(MotorConstant.class, MotorConstant::new),
    RATIO(Ratio.class, Ratio::new);

    private final Class<? extends Quantity> type;
    private final DoubleFunction<? extends Quantity> factory;

    <Q extends Quantity> Dimension(Class<Q> type, DoubleFunction<Q> factory) {
        this.type = type;
        this.factory = factory;
    }

    /** The record type that carries this dimension. */
    public Class<? extends Quantity> type() {
        return type;
    }

    /** The typed quantity of this dimension with the given value in the coherent SI unit. */
    public Quantity of(double si) {
        return factory.apply(si);
    }
}
