package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.duty.PowerBend;
import io.axiswright.engine.duty.StopModel;
import io.axiswright.engine.numeric.WorstInstant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
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

    /** An instant, and in which stretch between two cuts it is meant. */
    private record Moment(double instant, int stretch) {}

    private record StopAt(int axis, double instant, int stretch) {}

    /** The stops of one axis begun from one instant to another. */
    private record Span(int axis, double from, double to) {}

    /** Wider than what merges neighbouring cuts. */
    private static final double SAME = 1e-11;

    private final List<Stopping> stopping;
    private final CyclePower others;
    private final double period;
    private final boolean losses;
    private final double[] cuts;
    private final double[] jumps;
    private final Map<Moment, BusPower> powers = new HashMap<>();
    private final Map<StopAt, PowerCourse> courses = new HashMap<>();
    private final Map<StopAt, Double> peaks = new HashMap<>();
    private final Map<Span, PowerBend> bends = new HashMap<>();

    /**
     * A scene.
     *
     * @param stopping the axes that stop
     * @param others power of all that go on, over the common cycle; without pieces if none does
     * @param period how long the common cycle lasts, s
     * @param losses whether motors and drives burn energy
     */
    StopScene(List<Stopping> stopping, CyclePower others, double period, boolean losses) {
        this.stopping = List.copyOf(stopping);
        this.others = others;
        this.period = period;
        this.losses = losses;
        cuts = WorstInstant.tidy(
                DoubleStream.concat(others.instants(), everyTurn(StopModel::cuts))
                        .toArray(),
                period);
        jumps = everyTurn(StopModel::jumps).sorted().toArray();
    }

    private DoubleStream everyTurn(Function<StopModel, double[]> instants) {
        return stopping.stream()
                .flatMapToDouble(one -> DoubleStream.iterate(0, turn -> turn < period, turn -> turn + one.period())
                        .flatMap(turn ->
                                DoubleStream.of(instants.apply(one.model())).map(t -> turn + t)));
    }

    List<Stopping> stopping() {
        return stopping;
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
                period,
                losses);
    }

    /** Instants of the common cycle between which the stop changes smoothly, ascending, from its start to its end, s. */
    double[] cuts() {
        return cuts.clone();
    }

    /** Whether the stops begun just before an instant and just after it may differ; never between two cuts. */
    boolean jumps(double instant) {
        int at = Arrays.binarySearch(jumps, instant);
        int next = at < 0 ? -at - 1 : at;
        return next < jumps.length && jumps[next] - instant <= SAME * period
                || next > 0 && instant - jumps[next - 1] <= SAME * period;
    }

    /** Power returned by all together from the start of deceleration, begun at an instant. */
    BusPower power(double instant, double beside) {
        return powers.computeIfAbsent(new Moment(instant, stretch(beside)), at -> together(instant, beside));
    }

    private BusPower together(double instant, double beside) {
        if (alone()) {
            return BusPower.once(List.of(workedOut(stopping.getFirst(), instant, beside)));
        }
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
        for (int axis = 0; axis < stopping.size(); axis++) {
            sum += bend(axis, from, to).energy();
        }
        return sum;
    }

    /** The same while a constant power is taken away, W: nothing where the axes are sure never to return more than that. */
    double bendOver(double drain, double from, double to) {
        double highest = others.isEmpty() ? 0 : others.highest(from, to + duration());
        for (int axis = 0; axis < stopping.size(); axis++) {
            highest += highest(axis, from, to);
        }
        return highest <= drain ? 0 : bend(from, to, 0);
    }

    /** No stop begun between two instants ever returns more power than this, W. */
    double powerBound(double from, double to) {
        double beside = (from + to) / 2;
        double sum = others.isEmpty() ? 0 : others.highest(from, to + duration());
        for (int axis = 0; axis < stopping.size(); axis++) {
            double between = Math.max(peak(axis, from, beside), peak(axis, to, beside))
                    + bend(axis, from, to).power();
            sum += Math.min(between, highest(axis, from, to));
        }
        return sum;
    }

    private double highest(int axis, double from, double to) {
        double standby = losses ? stopping.get(axis).unit().standbyLoss().si() : 0;
        return Math.max(0, bend(axis, from, to).highest() - standby);
    }

    private PowerBend bend(int axis, double from, double to) {
        Stopping one = stopping.get(axis);
        return bends.computeIfAbsent(new Span(axis, from, to), span -> {
            double beside = (from + to) / 2;
            return one.model().bend(one.phase(from, beside), one.phase(to, beside), losses ? copper(one.unit()) : 0);
        });
    }

    private double peak(int axis, double instant, double beside) {
        if (alone()) {
            return power(instant, beside).peak();
        }
        return peaks.computeIfAbsent(
                at(axis, instant, beside), at -> course(axis, instant, beside).peak());
    }

    /** Whether there is nothing to add up: most buses are of one axis. */
    private boolean alone() {
        return stopping.size() == 1 && others.isEmpty();
    }

    /** Power returned by one axis from the start of deceleration, begun at an instant. */
    PowerCourse course(int axis, double instant, double beside) {
        return courses.computeIfAbsent(at(axis, instant, beside), at -> workedOut(stopping.get(axis), instant, beside));
    }

    private StopAt at(int axis, double instant, double beside) {
        return new StopAt(axis, instant, stretch(beside));
    }

    private int stretch(double instant) {
        int found = Arrays.binarySearch(cuts, instant);
        return found < 0 ? -found - 2 : found;
    }

    private PowerCourse workedOut(Stopping one, double instant, double beside) {
        Course course = one.model().from(one.phase(instant, beside), one.phase(beside, beside));
        return losses ? PowerCourse.withLosses(course, one.unit()) : PowerCourse.withoutLosses(course);
    }

    private static double copper(DriveUnit unit) {
        double km = unit.motorConstant().si();
        return 1 / (km * km);
    }
}
