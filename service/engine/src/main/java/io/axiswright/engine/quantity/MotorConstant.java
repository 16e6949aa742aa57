package io.axiswright.engine.quantity;

/**
 * A motor constant Km: torque per square root of the copper loss it costs.
 *
 * @param newtonMetresPerRootWatt the value in N.m/W^0.5; finite
 */
public record MotorConstant(double newtonMetresPerRootWatt) implements Quantity {

    /** Refuses a value that is not finite. */
    public MotorConstant {
        Quantity.requireFinite(newtonMetresPerRootWatt);
    }

    @Override
    public double si() {
        return newtonMetresPerRootWatt;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MOTOR_CONSTANT;
    }
}
