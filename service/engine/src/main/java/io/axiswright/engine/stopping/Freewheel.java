package io.axiswright.engine.stopping;

import io.axiswright.engine.duty.CoastLoad;

/**
 * The motion of a motor shaft without torque of its own, in one direction: J·dw/dt + k·w + c = 0. Each link of the transmission
 * passes its torque by one of two efficiencies, by the direction of power; a mode says which each of them uses, bit by bit.
 *
 * @param load what it moves
 * @param direction sign of the speed
 * @param brake torque of a brake on the shaft, N·m; 0 while it is open
 */
record Freewheel(CoastLoad load, double direction, double brake) {

    /** A torque as a linear function of the shaft's acceleration and speed. */
    private record Linear(double acceleration, double speed, double constant) {

        /** Passed on by an efficiency over a ratio, and what turns there added. */
        Linear passed(double factor, double inertia, double torque) {
            return new Linear(factor * acceleration + inertia, factor * speed, factor * constant + torque);
        }

        double at(double a, double w) {
            return acceleration * a + speed * w + constant;
        }
    }

    private int links() {
        return load.links().size();
    }

    /**
     * Torques wanted of each link in a mode, and last the balance at the motor, which is to be 0. A self-locking link resists with more
     * than the load pulls with, and were the load so heavy that no acceleration could balance that, the motion would jam: then no
     * more is counted on than that it lets nothing through.
     */
    private Linear[] torques(int mode) {
        Linear[] torques = torques(mode, Double.NEGATIVE_INFINITY);
        return torques[links()].acceleration() > 0 ? torques : torques(mode, 0);
    }

    private Linear[] torques(int mode, double leastBackDriving) {
        Linear[] torques = new Linear[links() + 1];
        double turns = 1 / load.ratio();
        Linear torque =
                new Linear(load.inertia() * turns, load.viscous() * turns, load.weight() + direction * load.friction());
        for (int k = 0; k < links(); k++) {
            torques[k] = torque;
            CoastLoad.Link link = load.links().get(k);
            turns *= link.ratio();
            boolean driving = (mode >> k & 1) == 1;
            double factor =
                    (driving ? 1 / link.driving() : Math.max(leastBackDriving, link.backDriving())) / link.ratio();
            torque = torque.passed(factor, link.inertia() * turns, direction * link.drag());
        }
        torques[links()] = torque.passed(1, load.motorInertia(), direction * brake);
        return torques;
    }

    /** The motion from a speed on, rad/s. */
    Glide from(double speed) {
        return glide(mode(speed), 0, speed);
    }

    /** The torque at the output of the last link, the one at the motor, at a speed in rad/s; its magnitude, N·m. */
    double outputTorque(double speed) {
        Linear[] torques = torques(mode(speed));
        return Math.abs(torques[links() - 1].at(acceleration(torques[links()], speed), speed));
    }

    /** The same torque as the motor's side has it. */
    GearTorque gearTorque(double speed) {
        int mode = mode(speed);
        Linear[] torques = torques(mode);
        CoastLoad.Link last = load.links().getLast();
        boolean driving = (mode >> links() - 1 & 1) == 1;
        return new GearTorque(
                torques[links()].acceleration(),
                -direction * acceleration(torques[links()], speed),
                load.motorInertia() + last.inertia(),
                last.drag(),
                driving ? 1 / last.driving() : last.backDriving(),
                last.ratio());
    }

    /**
     * What the torque at the output of the link at the motor follows from.
     *
     * @param inertia inertia of all that turns, at the motor, kg·m²
     * @param deceleration how fast the motor slows down, rad/s²
     * @param motorInertia inertia of the motor and what turns with it, kg·m²
     * @param drag friction torque there, N·m
     * @param factor torque at the link's input over torque at its output, ratio left out
     * @param ratio turns of its input per turn of its output
     */
    record GearTorque(
            double inertia, double deceleration, double motorInertia, double drag, double factor, double ratio) {}

    private int mode(double speed) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int mode = 0; mode < 1 << links() && least > 0; mode++) {
            double miss = miss(mode, speed);
            if (miss < least) {
                least = miss;
                best = mode;
            }
        }
        return best;
    }

    /** By how much a mode contradicts the torques it leads to; a torque of nothing takes its sign from where it is heading. */
    private double miss(int mode, double speed) {
        Linear[] torques = torques(mode);
        double acceleration = acceleration(torques[links()], speed);
        double miss = 0;
        for (int k = 0; k < links(); k++) {
            double torque = torques[k].at(acceleration, speed) * direction;
            boolean driving = (mode >> k & 1) == 1;
            boolean drives = torque == 0 ? acceleration * direction > 0 : torque > 0;
            if (driving != drives) {
                miss += Math.max(Math.abs(torque), Double.MIN_NORMAL);
            }
        }
        return miss;
    }

    private static double acceleration(Linear balance, double speed) {
        return -(balance.speed() * speed + balance.constant()) / balance.acceleration();
    }

    /**
     * The motion in a mode. As the speed changes one way only, each link's torque does too, and changes its sign but once.
     *
     * @param done links whose torque has changed its sign already, bit by bit
     */
    private Glide glide(int mode, int done, double speed) {
        Linear[] torques = torques(mode);
        Linear balance = torques[links()];
        double rate = balance.speed() / balance.acceleration();
        double acceleration = acceleration(balance, speed);
        double turning = Double.POSITIVE_INFINITY;
        int turned = 0;
        for (int k = 0; k < links() && rate > 0; k++) {
            double torque = torques[k].at(acceleration, speed);
            double change = acceleration * (torques[k].speed() - torques[k].acceleration() * rate);
            double instant = Glide.instant(-torque / change, rate);
            if ((done >> k & 1) == 0 && torque * change < 0 && instant < turning) {
                turning = instant;
                turned = 1 << k;
            }
        }
        int link = turned;
        return new Glide(
                speed,
                acceleration,
                balance.acceleration(),
                rate,
                turning,
                later -> glide(mode ^ link, done | link, later));
    }
}
