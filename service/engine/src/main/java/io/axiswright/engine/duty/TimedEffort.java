package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A mechanism whose torque and inertia an outsider changes over the time of the cycle: T = d(J·w)/dt + torque, exact polynomials
 * whatever the law. In a stop both stay what they were.
 *
 * @param torque torque against the positive direction over the time of the stated cycle, N·m
 * @param inertia inertia over that time, kg·m²
 * @param from when in the stated cycle the effort begins, s
 * @param until when in the stated cycle it ends, s
 * @param pace how much of the stated cycle passes per second
 * @param payload inertia carried on top, kg·m²
 * @param coulomb friction that does not depend on speed, always against the motion, N·m
 * @param viscous friction per speed, N·m·s
 * @param process torque of the process against the positive direction, N·m
 */
record TimedEffort(
        TableCurve torque,
        TableCurve inertia,
        double from,
        double until,
        double pace,
        double payload,
        double coulomb,
        double viscous,
        double process)
        implements TurningEffort {

    /** Instants of the table nearer to an end than this share of a motion are that end. */
    private static final double SLIVER = 1e-10;

    /** A stretch of time over which both curves are straight. */
    private record Part(double start, double length, Polynomial torque, Polynomial inertia) {}

    @Override
    public boolean timed() {
        return true;
    }

    @Override
    public TimedEffort during(double start, double stated, double actual) {
        return new TimedEffort(
                torque, inertia, start, start + stated, stated / actual, payload, coulomb, viscous, process);
    }

    @Override
    public TimedEffort later(double time) {
        return new TimedEffort(torque, inertia, from + pace * time, until, pace, payload, coulomb, viscous, process);
    }

    @Override
    public EvenEffort held(double time) {
        double place = from + pace * time;
        return new EvenEffort(1, inertia.at(place) + payload, torque.at(place), 0, coulomb, viscous, process);
    }

    @Override
    public List<ShaftPiece> moving(LoadMotion motion) {
        List<ShaftPiece> pieces = new ArrayList<>();
        for (Part part : parts(motion.duration())) {
            Polynomial position = motion.position().shifted(part.start);
            Polynomial speed = position.derivative();
            Polynomial felt = part.inertia
                    .times(speed)
                    .derivative()
                    .plus(speed.times(viscous))
                    .plus(part.torque)
                    .plus(process + motion.direction() * coulomb);
            pieces.add(new ShaftPiece(part.start, part.length, position, speed, speed.derivative(), felt));
        }
        return pieces;
    }

    @Override
    public List<ShaftPiece> resting(double position, double duration) {
        return parts(duration).stream()
                .map(part -> ShaftPiece.resting(part.start, part.length, position, part.torque.plus(process)))
                .toList();
    }

    @Override
    public ShaftRange range(
            Enclosure time, Enclosure position, Enclosure speed, Enclosure acceleration, double direction) {
        Enclosure place = time.times(pace).plus(from);
        Enclosure felt = inertia.value(place)
                .plus(payload)
                .times(acceleration)
                .plus(speed.times(viscous))
                .plus(torque.value(place))
                .plus(process + direction * coulomb);
        return new ShaftRange(speed, acceleration, felt);
    }

    @Override
    public double holding(double position) {
        return torque.at(from) + process;
    }

    @Override
    public double largestHolding(double from, double to) {
        return places().map(torque::at)
                .map(own -> Math.max(Math.abs(own), Math.abs(own + process)))
                .max()
                .orElse(0);
    }

    @Override
    public double largestInertia(double from, double to) {
        return places().map(inertia::at).max().orElse(0) + payload;
    }

    @Override
    public boolean falls() {
        return DoubleStream.of(torque.y()).anyMatch(value -> value != 0);
    }

    @Override
    public boolean uneven() {
        return false;
    }

    /** Where in the stated cycle its curves may be highest or lowest, s. */
    private DoubleStream places() {
        return DoubleStream.concat(
                DoubleStream.of(from, until), DoubleStream.of(torque.x()).filter(x -> x > from && x < until));
    }

    private List<Part> parts(double duration) {
        double[] ends = DoubleStream.concat(
                        DoubleStream.of(0, duration),
                        DoubleStream.of(torque.x())
                                .map(x -> (x - from) / pace)
                                .filter(t -> t > SLIVER * duration && t < (1 - SLIVER) * duration))
                .sorted()
                .toArray();
        List<Part> parts = new ArrayList<>(ends.length - 1);
        for (int k = 1; k < ends.length; k++) {
            double start = from + pace * ends[k - 1];
            double middle = from + pace * (ends[k - 1] + ends[k]) / 2;
            parts.add(new Part(
                    ends[k - 1],
                    ends[k] - ends[k - 1],
                    over(torque.around(middle), start),
                    over(inertia.around(middle), start).plus(payload)));
        }
        return parts;
    }

    /** A stretch of the table over the time since a place in it. */
    private Polynomial over(TableCurve.Stretch stretch, double start) {
        return stretch.value().shifted(start - stretch.origin()).stretched(1 / pace);
    }
}
