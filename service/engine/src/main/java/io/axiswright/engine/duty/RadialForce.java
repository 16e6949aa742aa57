package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.ShaftLoad;
import org.jspecify.annotations.Nullable;

/**
 * The radial force of a mechanism on the shaft that drives it: a part that is always there and one that goes with the torque.
 * Their directions are not known, so they are added as if they were one.
 *
 * @param steady the part that is always there, N
 * @param perTorque the part for each unit of torque at the mechanism's shaft, N/(N·m)
 */
record RadialForce(double steady, double perTorque) {

    private static final double GRAVITY = 9.80665;

    /** Pressure angle of the standard basic rack (ISO 53, from memory), rad. */
    private static final double PRESSURE_ANGLE = Math.toRadians(20);

    /** On the motor's shaft; none where nothing pulls at it, or where a gear or a coupling stands between. */
    static @Nullable RadialForce of(Axis axis, double hardestPull) {
        if (!axis.gears().isEmpty() || axis.couplingInertia() != null) {
            return null;
        }
        ShaftLoad stated = axis.shaftLoad();
        double weight = stated == null || stated.overhungMass() == null
                ? 0
                : stated.overhungMass().si() * GRAVITY;
        return switch (axis.mechanism()) {
            case Belt belt -> new RadialForce(weight + 2 * BeltChecks.pretension(belt, hardestPull), 0);
            case RackAndPinion rack -> new RadialForce(weight, perTorque(rack, stated));
            default -> weight == 0 ? null : new RadialForce(weight, 0);
        };
    }

    /** Tooth force F at the pitch circle and F·tan(alpha) that pushes pinion and rack apart make F/cos(alpha). */
    private static double perTorque(RackAndPinion rack, @Nullable ShaftLoad stated) {
        double angle = stated == null || stated.pressureAngle() == null
                ? PRESSURE_ANGLE
                : stated.pressureAngle().si();
        return 2 / rack.pitchDiameter().si() / Math.cos(angle);
    }

    /** Its largest under a torque at the mechanism's shaft, N. */
    double largest(double hardestPull) {
        return steady + perTorque * hardestPull;
    }
}
