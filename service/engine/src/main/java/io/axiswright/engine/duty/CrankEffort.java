package io.axiswright.engine.duty;

import java.util.ArrayList;
import java.util.List;

/**
 * A slider on a crank, by Lagrange's equation: with x the slider's way over the angle, T = m·x'·(x'·a + x''·w²) + F·x'.
 *
 * @param radius crank radius, m
 * @param rod length of the connecting rod, m; infinite for a straight slot
 * @param mass mass of slider and payload, kg
 * @param gravity weight along the slider's way, against its positive direction, N
 * @param coulomb friction of the slider, always against its motion, N
 * @param viscous its friction per speed, N·s/m
 * @param process force of the process against the slider's positive direction, N
 */
record CrankEffort(
        double radius, double rod, double mass, double gravity, double coulomb, double viscous, double process)
        implements LoadEffort {

    @Override
    public List<ShaftPiece> moving(LoadMotion motion) {
        LoadMotion first = Turns.first(motion);
        return Instants.ofShaft(first, coulomb > 0 ? deadCentres(first) : List.of(), _ -> (angle, w, a) -> {
            double way = way(angle);
            double inertial = mass * (way * a + bend(angle) * w * w);
            double resisting = gravity + process + viscous * way * w;
            return way * (inertial + resisting) + Math.abs(way) * coulomb * first.direction();
        });
    }

    @Override
    public List<ShaftPiece> levers(LoadMotion motion) {
        return Instants.ofShaft(Turns.first(motion), (angle, w, a) -> way(angle));
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

    @Override
    public long place(double position) {
        return Turns.place(position);
    }

    /** dx/dangle: r·s·(1 + r·c/sqrt(l² − r²·s²)); without a rod the root is infinite and leaves the sine. */
    private double way(double angle) {
        double s = Math.sin(angle);
        return radius * s * (1 + radius * Math.cos(angle) / root(s));
    }

    /** d²x/dangle². */
    private double bend(double angle) {
        double s = Math.sin(angle);
        double c = Math.cos(angle);
        double root = root(s);
        double share = radius * s * c / root;
        return radius * (c + radius * (c * c - s * s) / root + radius * share * share / root);
    }

    private double root(double sine) {
        return Math.sqrt(rod * rod - radius * radius * sine * sine);
    }

    private double largestWay(double from, double to) {
        return Instants.largest(this::way, from, Turns.end(from, to));
    }

    private static List<Double> deadCentres(LoadMotion motion) {
        double one = motion.position().at(0);
        double other = motion.position().at(motion.duration());
        List<Double> angles = new ArrayList<>();
        for (double k = Math.ceil(Math.min(one, other) / Math.PI); k * Math.PI < Math.max(one, other); k++) {
            angles.add(k * Math.PI);
        }
        return angles;
    }
}
