package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import java.util.List;

/**
 * A roll with material under tension. R² grows by thickness/pi per wound length. The torque is T = F·R + J·dw/dt without a term
 * w·dJ/dt: the material that arrives already has the angular momentum it gets (derived; moving the material costs the line, not
 * the roll).
 *
 * @param line whether positions are wound lengths; angles of the roll otherwise
 * @param start radius of the roll at position 0, m
 * @param thickness thickness of the material as wound, m
 * @param core radius of the core, m
 * @param heaviness inertia of the material is this times (R⁴ − core⁴), kg/m²
 * @param tension pull of material and process against winding, N
 * @param resting pull of the material alone, N
 * @param viscous friction per speed of the roll, N·m·s
 */
record WinderEffort(
        boolean line,
        double start,
        double thickness,
        double core,
        double heaviness,
        double tension,
        double resting,
        double viscous)
        implements LoadEffort {

    @Override
    public List<ShaftPiece> moving(LoadMotion motion) {
        return pieces(
                motion,
                (position, speed, shaft) -> torque(radius(position), shaft) + viscous * turning(position, speed));
    }

    @Override
    public List<ShaftPiece> levers(LoadMotion motion) {
        return pieces(motion, (position, speed, shaft) -> radius(position));
    }

    /** The value takes the acceleration of the shaft. */
    private List<ShaftPiece> pieces(LoadMotion motion, Instants.Value torque) {
        return line
                ? Instants.ofLoad(
                        motion,
                        (s, v, a) -> turning(s, v),
                        this::acceleration,
                        (s, v, a) -> torque.at(s, v, acceleration(s, v, a)))
                : Instants.ofShaft(motion, torque);
    }

    @Override
    public ShaftRange range(
            Enclosure time, Enclosure position, Enclosure speed, Enclosure acceleration, double direction) {
        Enclosure radius = radius(position);
        Enclosure inertia = radius.squared().squared().plus(-Math.pow(core, 4)).times(heaviness);
        Enclosure turning = line ? speed.times(radius.inverse()) : speed;
        Enclosure gaining = line
                ? acceleration
                        .times(radius.inverse())
                        .plus(turning.squared().times(radius.inverse()).times(-thickness / (2 * Math.PI)))
                : acceleration;
        return new ShaftRange(
                turning,
                gaining,
                radius.times(tension).plus(inertia.times(gaining)).plus(turning.times(viscous)));
    }

    @Override
    public double lever(double position) {
        return radius(position);
    }

    @Override
    public double holding(double position) {
        return tension * radius(position);
    }

    @Override
    public double largestHolding(double from, double to) {
        double pull = Math.max(Math.abs(tension), Math.abs(resting));
        return pull * radius(Math.max(from, to));
    }

    @Override
    public double viscousFriction() {
        return viscous;
    }

    @Override
    public double largestInertia(double from, double to) {
        return inertia(radius(Math.max(from, to)));
    }

    @Override
    public boolean falls() {
        return false;
    }

    private double torque(double radius, double acceleration) {
        return tension * radius + inertia(radius) * acceleration;
    }

    /** Speed of the roll, rad/s. */
    private double turning(double position, double speed) {
        return line ? speed / radius(position) : speed;
    }

    private double inertia(double radius) {
        return heaviness * (Math.pow(radius, 4) - Math.pow(core, 4));
    }

    /** w = v/R, so dw/dt = a/R − thickness·v²/(2·pi·R³). */
    private double acceleration(double s, double v, double a) {
        double radius = radius(s);
        return a / radius - thickness * v * v / (2 * Math.PI * radius * radius * radius);
    }

    /** Of one spiral, by length or by angle; a stop may run on beyond the core, where nothing is left to unwind. */
    private double radius(double position) {
        double radius = line
                ? Math.sqrt(Math.max(core * core, start * start + thickness * position / Math.PI))
                : start + thickness * position / (2 * Math.PI);
        return Math.max(core, radius);
    }

    private Enclosure radius(Enclosure position) {
        return line
                ? position.times(thickness / Math.PI)
                        .plus(start * start)
                        .atLeast(core * core)
                        .root()
                : position.times(thickness / (2 * Math.PI)).plus(start).atLeast(core);
    }
}
