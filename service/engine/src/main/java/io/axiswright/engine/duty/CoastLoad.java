package io.axiswright.engine.duty;

import java.util.List;

/**
 * What resists an axis whose drive unit gives no torque, as simple coefficients: the load on the mechanism's shaft, the way
 * from there to the motor link by link, and what turns with the motor.
 *
 * @param inertia moved mass or inertia at the mechanism's shaft, kg·m²
 * @param weight torque against the positive direction whatever the motion, N·m
 * @param friction friction torque that does not depend on speed, always against the motion, N·m
 * @param viscous friction torque per speed of that shaft, N·m·s
 * @param links the mechanism itself, then the gears, the one at the motor last
 * @param motorInertia inertia of motor, brake, coupling and gear input, kg·m²
 */
public record CoastLoad(
        double inertia, double weight, double friction, double viscous, List<Link> links, double motorInertia) {

    /**
     * One element of the way, from the load's side to the motor's.
     *
     * @param ratio turns of its input per turn of its output
     * @param driving efficiency where the motor drives the load
     * @param backDriving efficiency where the load drives the motor; 0 or below if it locks itself: below, its own friction still
     *     resists the motion with that share of what the load pulls with
     * @param inertia inertia on its input shaft, kg·m²; 0 at the motor
     * @param drag friction torque of its input shaft, always against the motion, N·m
     */
    public record Link(double ratio, double driving, double backDriving, double inertia, double drag) {}

    /** Keeps the links from being changed. */
    public CoastLoad {
        links = List.copyOf(links);
    }

    /** Motor turns per turn of the mechanism's shaft. */
    public double ratio() {
        double ratio = 1;
        for (Link link : links) {
            ratio *= link.ratio();
        }
        return ratio;
    }
}
