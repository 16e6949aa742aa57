package io.axiswright.engine.motion;

import io.axiswright.engine.design.Segment;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a segment does: the speed of the load over time in exact stretches; m and rad, of the motor shaft for courses taken
 * there.
 *
 * @param stretches the stretches, end to end, the first starting at 0 s
 * @param duration how long it lasts, s
 * @param travel how far it goes in all, signed
 * @param travelled the sum of all distances
 * @param startSpeed speed at its start, signed
 * @param endSpeed speed at its end, signed
 * @param belowTopSpeed whether a move is too short for the top speed that limits it
 */
public record Motion(
        List<Stretch> stretches,
        double duration,
        double travel,
        double travelled,
        double startSpeed,
        double endSpeed,
        boolean belowTopSpeed) {

    /**
     * A stretch over which the speed is one polynomial that keeps its sign.
     *
     * @param start when it starts, s
     * @param length how long it lasts, s
     * @param speed speed over the time since its start
     * @param direction sign of the speed; 0 at rest
     * @param effort the effort that moves the load, where the segment states it
     */
    public record Stretch(
            double start,
            double length,
            Polynomial speed,
            int direction,
            @Nullable Polynomial effort) {}

    /** Speeds below this share of the peak speed are rest. */
    private static final double REST = 1e-9;

    /** Keeps the list from being changed. */
    public Motion {
        stretches = List.copyOf(stretches);
    }

    /**
     * The motion of a segment that has one.
     *
     * @throws InvalidDesign with all its faults if the segment states too much, too little or the impossible
     */
    public static Motion of(Segment segment) {
        List<Fault> faults = new ArrayList<>();
        Motion motion = SegmentMotion.of(segment, "", faults);
        if (motion == null) {
            throw new InvalidDesign(faults);
        }
        return motion;
    }

    /** The same way taking so many times as long; rest, and what is moved by a stated effort, stay as they are. */
    public Motion slower(double factor) {
        boolean stays = factor == 1 || travelled == 0 || stretches.stream().anyMatch(stretch -> stretch.effort != null);
        return stays ? this : slowed(factor);
    }

    /** The same way in another time: a factor above 0 by which every instant comes later, speeds become 1/factor of theirs. */
    public Motion slowed(double factor) {
        List<Stretch> slower = stretches.stream()
                .map(stretch -> new Stretch(
                        stretch.start * factor,
                        stretch.length * factor,
                        stretch.speed.stretched(factor).times(1 / factor),
                        stretch.direction,
                        stretch.effort == null ? null : stretch.effort.stretched(factor)))
                .toList();
        return new Motion(
                slower, duration * factor, travel, travelled, startSpeed / factor, endSpeed / factor, belowTopSpeed);
    }

    /** Standstill. */
    static Motion rest(double duration) {
        return new Motion(List.of(new Stretch(0, duration, Polynomial.ZERO, 0, null)), duration, 0, 0, 0, 0, false);
    }

    /** Of stretches that may change direction; they are cut where they do. */
    static Motion of(List<Stretch> raw) {
        double peak = raw.stream().mapToDouble(Motion::peak).max().orElse(0);
        List<Stretch> stretches = new ArrayList<>();
        double travel = 0;
        double travelled = 0;
        for (Stretch stretch : raw) {
            for (Stretch part : parts(stretch, REST * peak)) {
                double distance = part.speed.integral(0, part.length);
                travel += distance;
                travelled += Math.abs(distance);
                stretches.add(part);
            }
        }
        Stretch last = raw.getLast();
        return new Motion(
                stretches,
                last.start + last.length,
                travel,
                travelled,
                raw.getFirst().speed.at(0),
                last.speed.at(last.length),
                false);
    }

    private static List<Stretch> parts(Stretch stretch, double rest) {
        List<Double> cuts = new ArrayList<>();
        cuts.add(0.0);
        for (double cut : stretch.speed.signChanges(0, stretch.length)) {
            if (peak(part(stretch, cuts.getLast(), cut)) > rest) {
                cuts.add(cut);
            }
        }
        if (cuts.size() > 1 && peak(part(stretch, cuts.getLast(), stretch.length)) <= rest) {
            cuts.removeLast();
        }
        cuts.add(stretch.length);
        List<Stretch> parts = new ArrayList<>();
        for (int k = 1; k < cuts.size(); k++) {
            parts.add(part(stretch, cuts.get(k - 1), cuts.get(k)));
        }
        return parts;
    }

    private static Stretch part(Stretch whole, double from, double to) {
        Polynomial speed = from == 0 ? whole.speed : whole.speed.shifted(from);
        Polynomial effort = whole.effort == null || from == 0 ? whole.effort : whole.effort.shifted(from);
        double size = 0;
        for (double t : speed.extremalPoints(0, to - from)) {
            size = Math.abs(speed.at(t)) > Math.abs(size) ? speed.at(t) : size;
        }
        return new Stretch(whole.start + from, to - from, speed, (int) Math.signum(size), effort);
    }

    private static double peak(Stretch stretch) {
        return stretch.speed.largestMagnitude(0, stretch.length);
    }
}
