package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.HoldingBrake;

/**
 * What an axis asks of its holding brake, at the motor shaft.
 *
 * @param torque it must hold at rest, margin included, N·m
 * @param pull what the load pulls with before any loss, N·m
 * @param inertia all that turns with the motor and the load behind it, but for the brake's own, kg·m²
 * @param speed highest speed, rad/s
 */
record BrakeNeed(double torque, double pull, double inertia, double speed) {

    /** Whether a brake holds it at rest. */
    boolean heldBy(HoldingBrake brake) {
        return brake.torque().si() >= torque;
    }

    /**
     * Whether a brake surely stops it when power is lost: it brakes with more than the load pulls with, and takes what that costs from
     * the highest speed on, the load speeding up until the brake bites. No friction is counted on, so the energy is an upper bound:
     * E = M·θ with θ = w²/(2·(M − T)/J) and w = w_max + T/J·t. Where a brake does not state what it takes, that is not judged.
     */
    boolean stoppedBy(HoldingBrake brake) {
        double braking = brake.brakingTorque();
        if (braking <= pull) {
            return false;
        }
        double all = inertia + brake.inertia().si();
        double biting = speed + pull / all * brake.engageDelay().si();
        double energy = braking * all * biting * biting / (2 * (braking - pull));
        return brake.stopEnergy() == null || energy <= brake.stopEnergy().si();
    }
}
