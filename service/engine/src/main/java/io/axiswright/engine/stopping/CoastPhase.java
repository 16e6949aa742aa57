package io.axiswright.engine.stopping;

/**
 * What happens between two events of a stop without motor torque: J·dw/dt = −(T_brake + T + k·w), w being the speed of the motor
 * shaft in the direction in which it turns.
 *
 * @param brake torque of the brake, N·m; 0 while it is open
 * @param duration how long it lasts, s
 * @param from speed at its start, rad/s; not negative
 * @param to speed at its end, rad/s; not negative
 * @param inertia J, kg·m², by the efficiencies that the direction of power asks for
 * @param torque T, what else holds it back whatever the speed, N·m; negative where the load drives
 * @param viscous k, N·m·s
 */
record CoastPhase(
        double brake, double duration, double from, double to, double inertia, double torque, double viscous) {

    /** Below this share of the torque viscous friction changes nothing that a calculator would show. */
    private static final double FAINT = 1e-5;

    static CoastPhase of(Glide glide, double brake, double duration, double to) {
        double direction = Math.signum(glide.speed() == 0 ? to : glide.speed());
        return new CoastPhase(
                brake,
                duration,
                direction * glide.speed(),
                direction * to,
                glide.inertia(),
                direction * glide.torque() - brake,
                glide.viscous());
    }

    boolean braking() {
        return brake > 0;
    }

    /** Whether viscous friction has a say. */
    boolean thick() {
        return viscous * Math.abs(from - to) > FAINT * Math.abs(brake + torque);
    }
}
