package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.duty.StopModel;
import io.axiswright.engine.duty.StopRange;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * A controlled stop of some axes of a bus, begun at any instant of the common cycle, while the others go on with their own.
 * Remembers the stops worked out: one search after the other looks at the same instants, with and without a braking unit, and
 * working out a stop takes most of their time.
 */
final class StopScene {

    /**
     * One axis that stops.
     *
     * @param model its stops
     * @param unit its drive unit
     * @param period how long its cycle lasts, s
     */
    record Stopping(StopModel model, DriveUnit unit, double period) {

        private double phase(double instant, double beside) {
            return instant - Math.floor(beside / period) * period;
        }
    }

    private record Moment(double instant, double beside) {}

    private record StopAt(int axis, double instant, double beside) {}

    private final List<Stopping> stopping;
    private final CyclePower others;
    private final boolean losses;
    private final Map<Moment, BusPower> powers = new HashMap<>();
    private final Map<StopAt, PowerCourse> courses = new HashMap<>();
    private final Map<StopAt, Double> peaks = new HashMap<>();

    /**
     * A scene.
     *
     * @param stopping the axes that stop
     * @param others power of all that go on, over the common cycle; without pieces if none does
     * @param losses whether motors and drives burn energy
     */
    StopScene(List<Stopping> stopping, CyclePower others, boolean losses) {
        this.stopping = List.copyOf(stopping);
        this.others = others;
        this.losses = losses;
    }

    List<Stopping> stopping() {
        return stopping;
    }

    /** Whether the bounds are certain for every axis. */
    boolean proven() {
        return stopping.stream().allMatch(one -> one.model().proven());
    }

    /** The longest deceleration, s: how long the bus is followed. */
    double duration() {
        return stopping.stream().mapToDouble(s -> s.model().duration()).max().orElse(0);
    }

    /** The same with every deceleration as long as this, s. */
    StopScene within(double time) {
        return new StopScene(
                stopping.stream()
                        .map(s -> new Stopping(s.model().within(time), s.unit(), s.period()))
                        .toList(),
                others,
                losses);
    }

    /** Instants of the common cycle between which the stop changes smoothly; in no order, s. */
    DoubleStream cuts(double cycle) {
        return DoubleStream.concat(
                others.instants(),
                stopping.stream()
                        .flatMapToDouble(s -> DoubleStream.iterate(0, t -> t < cycle, t -> t + s.period())
                                .flatMap(turn ->
                                        DoubleStream.of(s.model().cuts()).map(t -> turn + t))));
    }

    /** Power returned by all together from the start of deceleration, begun at an instant. */
    BusPower power(double instant, double beside) {
        return powers.computeIfAbsent(new Moment(instant, beside), at -> together(instant, beside));
    }

    private BusPower together(double instant, double beside) {
        List<PowerCourse> all = new ArrayList<>(stopping.size() + 1);
        for (int axis = 0; axis < stopping.size(); axis++) {
            all.add(course(axis, instant, beside));
        }
        if (!others.isEmpty()) {
            all.add(others.from(instant, beside, duration()));
        }
        return BusPower.once(all);
    }

    /**
     * The most by which the energy returned in any part of a stop begun between two instants exceeds what lies between the
     * energies of the same part of the stops begun at these two, J.
     */
    double bend(double from, double to, double decay) {
        double sum = others.isEmpty() ? 0 : others.bend(from, to, duration(), decay);
        double width = to - from;
        for (Stopping one : stopping) {
            double beside = (from + to) / 2;
            StopRange range = one.model().range(one.phase(from, beside), one.phase(to, beside));
            sum += one.model().duration() * bend(range, width, losses ? copper(one.unit()) : 0);
        }
        return sum;
    }

    /** No stop begun between two instants ever returns more power than this, W. */
    double powerBound(double from, double to) {
        double beside = (from + to) / 2;
        double sum = others.isEmpty() ? 0 : others.highest(from, to + duration());
        for (int axis = 0; axis < stopping.size(); axis++) {
            Stopping one = stopping.get(axis);
            StopRange range = one.model().range(one.phase(from, beside), one.phase(to, beside));
            sum += Math.max(peak(axis, from, beside), peak(axis, to, beside))
                    + bend(range, to - from, losses ? copper(one.unit()) : 0);
        }
        return sum;
    }

    private double peak(int axis, double instant, double beside) {
        return peaks.computeIfAbsent(
                new StopAt(axis, instant, beside),
                at -> course(axis, instant, beside).peak());
    }

    private PowerCourse course(int axis, double instant, double beside) {
        return courses.computeIfAbsent(
                new StopAt(axis, instant, beside), at -> workedOut(stopping.get(axis), instant, beside));
    }

    private PowerCourse workedOut(Stopping one, double instant, double beside) {
        Course course = one.model().from(one.phase(instant, beside), one.phase(beside, beside));
        return losses ? PowerCourse.withLosses(course, one.unit()) : PowerCourse.withoutLosses(course);
    }

    /** Of the power −(T·w + c·T²) at any one time since the start of the stop, W. */
    private static double bend(StopRange r, double width, double copper) {
        double second = r.torqueBend() * r.speed()
                + 2 * r.torqueRate() * r.speedRate()
                + r.torque() * r.speedBend()
                + 2 * copper * (r.torqueRate() * r.torqueRate() + r.torque() * r.torqueBend());
        double kink = r.torqueKink() * (r.speed() + 2 * copper * r.torque());
        return width * (second * width / 8 + kink / 4);
    }

    private static double copper(DriveUnit unit) {
        double km = unit.motorConstant().si();
        return 1 / (km * km);
    }
}
