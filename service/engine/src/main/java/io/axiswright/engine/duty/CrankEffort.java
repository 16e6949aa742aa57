package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import java.util.ArrayList;
import java.util.List;

/**
 * A slider on a crank, by Lagrange's equation: with x the slider's way over the angle, T = m·x'·(x'·a + x''·w²) + F·x'.
 *
 * @param radius crank radius, m
 * @param rod length of the connecting rod, m; infinite for a straight slot
 * @param offset how far the shaft stands off the slider's line, towards where the crank pin is at a quarter turn, m
 * @param mass mass of slider and payload, kg
 * @param gravity weight along the slider's way, against its positive direction, N
 * @param coulomb friction of the slider, always against its motion, N
 * @param viscous its friction per speed, N·s/m
 * @param process force of the process against the slider's positive direction, N
 */
record CrankEffort(
        double radius,
        double rod,
        double offset,
        double mass,
        double gravity,
        double coulomb,
        double viscous,
        double process)
        implements LoadEffort {

    @Override
    public List<ShaftPiece> moving(LoadMotion motion) {
        LoadMotion first = Turns.first(motion);
        return Instants.ofShaft(first, coulomb > 0 ? deadCentres(first) : List.of(), _ -> (angle, w, a) -> {
            Slide slide = slide(angle);
            double way = slide.way();
            double inertial = mass * (way * a + slide.bend() * w * w);
            double resisting = gravity + process + viscous * way * w;
            return way * (inertial + resisting) + Math.abs(way) * coulomb * first.direction();
        });
    }

    @Override
    public List<ShaftPiece> levers(LoadMotion motion) {
        return Instants.ofShaft(Turns.first(motion), (angle, w, a) -> way(angle));
    }

    @Override
    public ShaftRange range(
            Enclosure time, Enclosure position, Enclosure speed, Enclosure acceleration, double direction) {
        CrankSlide slide = CrankSlide.of(radius, rod, offset, position);
        Enclosure way = slide.way();
        Enclosure inertial = way.times(acceleration)
                .plus(slide.bend().times(speed.squared()))
                .times(mass);
        Enclosure resisting = way.times(speed).times(viscous).plus(gravity + process);
        Enclosure torque =
                way.times(inertial.plus(resisting)).plus(way.magnitude().times(coulomb * direction));
        return new ShaftRange(speed, acceleration, torque);
    }

    @Override
    public double lever(double position) {
        return way(position);
    }

    @Override
    public double holding(double position) {
        return (gravity + process) * way(position);
    }

    @Override
    public double largestHolding(double from, double to) {
        double force = Math.max(Math.abs(gravity), Math.abs(gravity + process));
        return force * largestWay(from, to);
    }

    @Override
    public double largestInertia(double from, double to) {
        double way = largestWay(from, to);
        return mass * way * way;
    }

    @Override
    public boolean falls() {
        return Math.abs(gravity) > EvenEffort.LEAST_SLOPE * Mechanics.FREE_FALL * mass;
    }

    /** Force across the slider's line that a rod presses the slider with against its guide, N. */
    double thrust(CrankState state, double time) {
        double sine = rodSine(state.angle().at(time));
        return sliderForce(state, time) * sine / Math.sqrt(1 - sine * sine);
    }

    /** Force along the slider's line that the crank must give it, N; where it turns back, friction is that of the piece. */
    double sliderForce(CrankState state, double time) {
        double angle = state.angle().at(time);
        double w = state.speed().at(time);
        Slide slide = slide(angle);
        double way = slide.way();
        double inertial = mass * (way * state.acceleration().at(time) + slide.bend() * w * w);
        double rubbing = coulomb * state.direction() * Math.signum(way(state.middle()));
        return inertial + gravity + process + viscous * way * w + rubbing;
    }

    /** Sine of the angle between rod and slider's line. */
    double rodSine(double angle) {
        return (radius * Math.sin(angle) - offset) / rod;
    }

    /**
     * dx/dangle: r·s + r·c·u/sqrt(l² − u²), where u = r·s − e is how far the crank pin is off the slider's line; without a rod the
     * root is infinite and leaves the sine.
     */
    private double way(double angle) {
        double s = Math.sin(angle);
        double off = radius * s - offset;
        return radius * s + off * radius * Math.cos(angle) / root(off);
    }

    /** How the slider goes at an angle: dx/dangle and d²x/dangle², m. */
    private record Slide(double way, double bend) {}

    private Slide slide(double angle) {
        double s = Math.sin(angle);
        double c = Math.cos(angle);
        double off = radius * s - offset;
        double root = root(off);
        double share = off * c / root;
        return new Slide(
                radius * s + off * radius * c / root,
                radius * (c + (radius * c * c - off * s) / root + radius * share * share / root));
    }

    private double root(double off) {
        return Math.sqrt(rod * rod - off * off);
    }

    private double largestWay(double from, double to) {
        return Instants.largest(this::way, from, Turns.end(from, to));
    }

    /** Where crank and rod lie in one line, stretched or folded, and the slider turns back. */
    private List<Double> deadCentres(LoadMotion motion) {
        double one = motion.position().at(0);
        double other = motion.position().at(motion.duration());
        double least = Math.min(one, other);
        double most = Math.max(one, other);
        List<Double> angles = new ArrayList<>();
        for (double dead :
                new double[] {Math.asin(offset / (rod + radius)), Math.PI + Math.asin(offset / (rod - radius))}) {
            for (double turn = Math.ceil((least - dead) / Turns.TURN); dead + turn * Turns.TURN < most; turn++) {
                angles.add(dead + turn * Turns.TURN);
            }
        }
        return angles;
    }
}
