package io.axiswright.engine.duty;

import java.util.List;

/**
 * Exact integrals over a cycle from which the rms torque of any motor follows at once: (L + J·a)² = L² + 2J·L·a + J²·a².
 *
 * @param period cycle period, s
 * @param torqueSquared integral of the load's torque squared, (N·m)²·s
 * @param torqueAcceleration integral of the load's torque times acceleration, N·m·rad/s
 * @param accelerationSquared integral of acceleration squared, rad²/s³
 * @param rmsSpeed rms speed of the motor shaft, rad/s
 * @param peakSpeed greatest magnitude of its speed, rad/s
 * @param peakSpeedAt when, s
 */
record LoadSums(
        double period,
        double torqueSquared,
        double torqueAcceleration,
        double accelerationSquared,
        double rmsSpeed,
        double peakSpeed,
        double peakSpeedAt) {

    static LoadSums of(List<LoadPiece> pieces, double period) {
        double torqueSquared = 0;
        double torqueAcceleration = 0;
        double accelerationSquared = 0;
        double speedSquared = 0;
        double peakSpeed = 0;
        double peakSpeedAt = 0;
        for (LoadPiece piece : pieces) {
            double end = piece.duration();
            torqueSquared += piece.torque().times(piece.torque()).integral(0, end);
            torqueAcceleration += piece.torque().times(piece.acceleration()).integral(0, end);
            accelerationSquared +=
                    piece.acceleration().times(piece.acceleration()).integral(0, end);
            speedSquared += piece.speed().times(piece.speed()).integral(0, end);
            if (piece.fastest() > peakSpeed) {
                peakSpeed = piece.fastest();
                peakSpeedAt = piece.start()
                        + Extreme.ofMagnitude(piece.speed(), 0, end).at();
            }
        }
        return new LoadSums(
                period,
                torqueSquared,
                torqueAcceleration,
                accelerationSquared,
                Math.sqrt(speedSquared / period),
                peakSpeed,
                peakSpeedAt);
    }

    /** The rms torque of the load alone, N·m. */
    double rmsLoad() {
        return Math.sqrt(torqueSquared / period);
    }

    /** The rms acceleration of the motor shaft, rad/s². */
    double rmsAcceleration() {
        return Math.sqrt(accelerationSquared / period);
    }

    /** The mean of the load's torque times acceleration, over the product of their rms values; 0 if either is. */
    double correlation() {
        double product = Math.sqrt(torqueSquared * accelerationSquared);
        return product == 0 ? 0 : torqueAcceleration / product;
    }

    /** The rms torque of a motor with the given inertia on its shaft, N·m. */
    double rmsTorque(double inertia) {
        double sum = torqueSquared + 2 * inertia * torqueAcceleration + inertia * inertia * accelerationSquared;
        return Math.sqrt(Math.max(0, sum) / period);
    }
}
